/** A number for a drawing on a page, to thousandths of a millimetre or to fewer digits, without trailing noughts. */
export function svgNumber(value: number, digits: 2 | 3 = 3): string {
  const power = 10 ** digits;
  return (Math.round(value * power) / power).toString();
}
