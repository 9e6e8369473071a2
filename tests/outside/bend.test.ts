import { describe, expect, it } from 'vitest';
import { clearOfBend, outsideSetbackMm } from '../../src/core/calc/bend-tangent.ts';
import { bendClearanceRules } from '../../src/core/reference/forming/bend-clearance.ts';
import { bendRadii } from '../../src/core/reference/forming/bend-radii.ts';
import { bendRadiusSteel } from '../../src/core/reference/forming/bend-radius-steel.ts';
import { holeSpacingRules } from '../../src/core/reference/forming/hole-spacing.ts';
import { agrees, readTable } from './read-table.ts';

describe('bend tangent', () => {
  // FAA AC 43.13-1B, worked setbacks
  it.each(readTable('setback'))('$angle_deg degrees', ({ angle_deg, radius_in, thickness_in, setback_in = '' }) => {
    const bend = {
      angleDeg: Number(angle_deg),
      radiusMm: Number(radius_in) * 25.4,
      thicknessMm: Number(thickness_in) * 25.4,
    };
    expect(agrees(setback_in, (outsideSetbackMm(bend) ?? Number.NaN) / 25.4)).toBe(true);
  });

  it('measures a hole from the tangent in multiples of the sheet', () => {
    // geometry: at 90 degrees the tangent lies R + T from the outside face; 10 - 2.8 - (1 + 1.5) = 4.7 mm, 3.13 sheets of 1.5
    const bend = { angleDeg: 90, radiusMm: 1, thicknessMm: 1.5 };
    expect(agrees('2.5', outsideSetbackMm(bend) ?? Number.NaN)).toBe(true);
    expect(agrees('3.13', clearOfBend(10, 5.6, bend) ?? Number.NaN)).toBe(true);
    expect(clearOfBend(5, 5.6, bend)).toBeLessThan(0);
  });

  it('knows no setback of a bend that is none', () => {
    const sound = { angleDeg: 90, radiusMm: 1, thicknessMm: 1.5 };
    const unsound = [
      { ...sound, angleDeg: 180 },
      { ...sound, angleDeg: 0 },
      { ...sound, thicknessMm: 0 },
      { ...sound, radiusMm: -1 },
    ];
    expect(unsound.map((bend) => outsideSetbackMm(bend))).toEqual([null, null, null, null]);
  });
});

describe('forming tables', () => {
  // FAA AC 43.13-1B Table 4-6
  it.each(readTable('bend-radii'))('$alloy at $t_in in', ({ alloy, t_in = '', low, times_t, high }) => {
    const row = bendRadii.rows.find((one) => one.alloy === alloy && agrees(t_in, one.thicknessIn));
    expect([String(row?.low), String(row?.high)]).toEqual([low || times_t, high || times_t]);
  });

  const rules = readTable('bend-clearance');

  // press-tool rules and design guides, as printed
  it('keeps the rules for holes beside bends', () => {
    const printed = rules
      .slice(0, 5)
      .map((rule) => [rule.multiple, rule.plus_radius === 'yes' ? 1 : 0, rule.mark].join(' '));
    expect(bendClearanceRules.rows.map((row) => [row.timesThickness, row.plusRadii, row.mark].join(' '))).toEqual(
      printed,
    );
  });

  // design guides; FAA AC 43.13-1B and NAVEDTRA 14018 for rivets
  it('keeps the rules for holes and rivets', () => {
    const isSpacing = ({ rule = '' }: Record<string, string>) =>
      !rule.includes('to bend') && !rule.includes('bend radius');
    const spacing = rules.filter((rule) => isSpacing(rule) || rule.rule === 'counterbore or countersink to bend');
    const printed = spacing.flatMap((rule) =>
      [rule.multiple || rule.multiple_low, rule.multiple_high].filter(Boolean).map((m) => `${m} ${rule.of}`),
    );
    expect(holeSpacingRules.rows.map((row) => `${row.multiple} ${row.of === 'thickness' ? 'T' : 'D'}`)).toEqual(
      printed,
    );
  });

  it('keeps the least radius of steel', () => {
    const printed = rules.find(({ rule = '' }) => rule.includes('bend radius low-carbon'));
    const [steel] = bendRadiusSteel.rows;
    expect(
      agrees(printed?.multiple ?? '', steel?.timesThickness ?? Number.NaN) &&
        agrees(printed?.floor_mm ?? '', steel?.leastMm ?? Number.NaN),
    ).toBe(true);
  });
});
