/** A mask of the places whose label is `wanted`, or with `others` of all that have another. */
export function maskOf(label: Uint8Array, wanted: number, others = false): Uint8Array {
  const mask = new Uint8Array(label.length);
  const [like, unlike] = others ? [0, 1] : [1, 0];
  for (let p = 0; p < label.length; p++) mask[p] = label[p] === wanted ? like : unlike;
  return mask;
}
