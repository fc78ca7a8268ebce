/** Whether two names are of one revision: in whatever letters they were typed. */
export function sameRevision(a: string, b: string): boolean {
  return a.toLowerCase() === b.toLowerCase();
}
