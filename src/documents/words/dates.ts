/** An ISO date in words, in the studio's language: `25 November 2026` or `November 25, 2026`. */
export function dateInWords(iso: string, language: string): string {
  const [year, month, day] = iso.split("-").map(Number) as [number, number, number];
  return new Intl.DateTimeFormat(language, {
    year: "numeric",
    month: "long",
    day: "numeric",
    timeZone: "UTC",
  }).format(new Date(Date.UTC(year, month - 1, day)));
}
