const DAY_MS = 86_400_000;
/** 31 December 9999. */
const LAST_SERIAL = 2_958_465;
/** Serial 60 is 29 February 1900, a day that never was; the days before it are one off. */
const FALSE_LEAP_DAY = 60;
/** 1 January 1904 counted from the end of 1899. */
const DAYS_TO_1904 = 1462;

/**
 * ISO text of a spreadsheet date: `2024-03-05`, `2024-03-05 10:30:00`, or `00:05:00` for a time without a day and for an
 * elapsed time. Nothing when the number is no date.
 */
export function showDate(serial: number, has1904Dates: boolean, isElapsed: boolean): string | undefined {
  if (!(serial >= 0 && serial <= LAST_SERIAL)) return undefined;
  if (isElapsed || serial < 1) return showTime(serial);
  const seconds = Math.round((serial % 1) * 86_400);
  const days = Math.floor(serial) + (has1904Dates ? DAYS_TO_1904 : 0);
  const day =
    days === FALSE_LEAP_DAY ? '1900-02-29' : showDay(days + (days < FALSE_LEAP_DAY ? 1 : 0), seconds === 86_400);
  return seconds % 86_400 === 0 ? day : `${day} ${showTime(seconds / 86_400)}`;
}

/** Date text of a cell that stores ISO text: midnight is dropped, the rest reads like `showDate`. */
export function tidyIsoDate(iso: string): string {
  return iso
    .trim()
    .replace(/T00:00:00(\.0+)?Z?$/, '')
    .replace(/^T/, '')
    .replace('T', ' ')
    .replace(/Z$/, '');
}

function showDay(daysSince1899: number, isNext: boolean): string {
  const date = new Date(Date.UTC(1899, 11, 30) + (daysSince1899 + (isNext ? 1 : 0)) * DAY_MS);
  return date.toISOString().slice(0, 10);
}

function showTime(days: number): string {
  const seconds = Math.round(days * 86_400);
  const parts = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60];
  return parts.map((part) => String(part).padStart(2, '0')).join(':');
}
