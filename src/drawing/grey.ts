/**
 * The grey as light as a colour (sRGB, IEC 61966-2-1, and its luminance weights). It is here, not taken from colour/, because a
 * drawing knows no colour science beyond "as light as".
 */
export function greyOf(hex: string): string {
  const channel = (at: number) => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  const light = 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
  const coded = light <= 0.0031308 ? light * 12.92 : 1.055 * light ** (1 / 2.4) - 0.055;
  const part = Math.round(Math.min(1, Math.max(0, coded)) * 255)
    .toString(16)
    .padStart(2, "0");
  return `#${part}${part}${part}`;
}
