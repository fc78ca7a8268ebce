/** Points of 1/72 in to a millimetre. */
const PT = 72 / 25.4;

/** Upright sheets in points: A3 and A4 (ISO 216), tabloid and letter (ANSI sizes). */
const SHEETS = [
  { width: 297 * PT, height: 420 * PT },
  { width: 210 * PT, height: 297 * PT },
  { width: 11 * 72, height: 17 * 72 },
  { width: 8.5 * 72, height: 11 * 72 },
] as const;

/** The print browser rounds a sheet up to whole pixels of 1/96 in. */
const ROUNDED_PT = 1;

/** The sheet, upright or lying, that a page of so many points is meant to be; null for any other size. */
export function exactSheet(
  width: number,
  height: number,
): { readonly width: number; readonly height: number } | null {
  const all = SHEETS.flatMap((s) => [s, { width: s.height, height: s.width }]);
  return (
    all.find(
      (s) => Math.abs(s.width - width) <= ROUNDED_PT && Math.abs(s.height - height) <= ROUNDED_PT,
    ) ?? null
  );
}
