import { css } from 'lit';

/** How the parts of a drawing are painted, in the page's tokens; shared by every place that shows one. */
export const drawingStyles = css`
  .drawing {
    display: block;
    max-width: 100%;
    height: auto;
    overflow: visible;
    color: var(--ink);
    font: 11px var(--font);
    font-variant-numeric: tabular-nums;
  }
  .drawing > path {
    fill: none;
    stroke: var(--soft);
    stroke-width: 0.75;
  }
  .drawing text {
    fill: var(--ink);
    stroke: var(--sheet);
    stroke-width: 3px;
    stroke-linejoin: round;
    paint-order: stroke;
  }
  .drawing text.soft {
    fill: var(--soft);
  }
  .drawing text.asked {
    fill: var(--blue);
  }
  .drawing .metal,
  .drawing .face {
    fill: var(--blue-ground);
    stroke: none;
  }
  .drawing .hatch {
    stroke: color-mix(in srgb, var(--blue) 45%, var(--sheet));
    stroke-width: 0.7;
  }
  .drawing .part {
    fill: color-mix(in srgb, var(--line) 45%, var(--sheet));
    stroke: none;
  }
  .drawing .coating {
    fill: var(--line);
    stroke: var(--soft);
  }
  .drawing .band {
    fill: var(--blue-ground);
    stroke: var(--ink);
    stroke-width: 1;
  }
  .drawing .scatter {
    fill: var(--blue);
    fill-opacity: 0.12;
    stroke: none;
  }
  .drawing .outline {
    stroke: var(--ink);
    stroke-width: 1.2;
  }
  .drawing .thread {
    stroke: var(--ink);
    stroke-width: 0.6;
  }
  .drawing .axis {
    stroke-dasharray: 9 3 2 3;
  }
  .drawing .thinnest {
    stroke: var(--ink);
  }
  .drawing > path.asked,
  .drawing > path.asked-dimension {
    stroke: var(--blue);
  }
  .drawing > path.asked {
    stroke-width: 1;
  }
  .drawing .unknown-fact {
    stroke: var(--unknown);
    stroke-width: 1;
    stroke-dasharray: 4 3;
  }
  .drawing .fastener {
    stroke: var(--ink);
    stroke-width: 2;
  }
  .drawing .wrong {
    fill: currentColor;
    fill-opacity: 0.16;
    stroke: currentColor;
    stroke-width: 1;
    stroke-dasharray: 3 2;
  }
  .drawing .marks {
    stroke: currentColor;
  }
  .drawing .holds,
  .drawing .marginal,
  .drawing .fails,
  .drawing .unknown,
  .drawing .note {
    --tone: var(--soft);
    color: var(--tone);
  }
  .drawing .holds {
    --tone: var(--holds);
  }
  .drawing .marginal {
    --tone: var(--marginal);
  }
  .drawing .fails {
    --tone: var(--fails);
  }
  .drawing .unknown {
    --tone: var(--unknown);
  }
  .drawing text.holds,
  .drawing text.marginal,
  .drawing text.fails,
  .drawing text.unknown {
    fill: currentColor;
  }
  @media print {
    .drawing {
      break-inside: avoid;
    }
  }
`;
