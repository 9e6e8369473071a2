/** Threads of the demo catalogue with their major diameter in mm (ISO 261 coarse; ASME B1.1, inch sizes times 25.4). */
export const THREAD_DIAMETERS_MM = {
  'M2.5': 2.5,
  M3: 3,
  M4: 4,
  M5: 5,
  M6: 6,
  M8: 8,
  '4-40': 2.8448,
  '6-32': 3.5052,
  '8-32': 4.1656,
  '10-24': 4.826,
  '10-32': 4.826,
  '1/4-20': 6.35,
} as const;

export type Thread = keyof typeof THREAD_DIAMETERS_MM;

/** A pin has a plain diameter in whole millimetres where other fasteners have a thread. */
export type PinSize = '3' | '4' | '5';

export type Size = Thread | PinSize;

/** Nominal diameter in mm of a thread or pin. */
export function diameterMm(size: Size): number {
  return isThread(size) ? THREAD_DIAMETERS_MM[size] : Number(size);
}

export function isThread(size: Size): size is Thread {
  return size in THREAD_DIAMETERS_MM;
}
