/**
 * Name of an ICC profile, for example `Display P3`, from its `desc` tag (ICC.1, clauses 7.3 and 10), or null where it has
 * none that can be read.
 */
export function profileName(icc: Uint8Array): string | null {
  const view = new DataView(icc.buffer, icc.byteOffset, icc.byteLength);
  try {
    const tags = view.getUint32(128);
    for (let i = 0; i < Math.min(tags, 100); i++) {
      const entry = 132 + i * 12;
      if (view.getUint32(entry) === 0x64657363) return textAt(icc, view, view.getUint32(entry + 4));
    }
  } catch {
    // A profile that ends early has no name.
  }
  return null;
}

function textAt(icc: Uint8Array, view: DataView, at: number): string | null {
  const type = view.getUint32(at);
  let text = "";
  if (type === 0x64657363) {
    const length = view.getUint32(at + 8);
    text = new TextDecoder("latin1").decode(icc.subarray(at + 12, at + 12 + length));
  } else if (type === 0x6d6c7563) {
    const length = view.getUint32(at + 20);
    const start = at + view.getUint32(at + 24);
    for (let i = start; i < start + length; i += 2) text += String.fromCharCode(view.getUint16(i));
  }
  const clean = text.replace(/\0/g, "").trim();
  return clean === "" ? null : clean;
}
