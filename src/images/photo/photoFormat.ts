/** Kinds of file that we tell apart by their first bytes; a name's ending may lie. */
export type FileKind =
  | "jpeg"
  | "png"
  | "webp"
  | "tiff"
  | "avif"
  | "heic"
  | "gif"
  | "svg"
  | "pdf"
  | "bmp"
  | "unknown";

/** The kinds that are read as photographs. */
export type PhotoFormat = "jpeg" | "png" | "webp" | "tiff" | "avif";

const READABLE: readonly string[] = ["jpeg", "png", "webp", "tiff", "avif"];

/** True for the kinds that are read as photographs. */
export function isPhotoFormat(kind: FileKind): kind is PhotoFormat {
  return READABLE.includes(kind);
}

/** Kind of a file by its first bytes. */
export function fileKind(bytes: Uint8Array): FileKind {
  const ascii = (from: number, to: number) => String.fromCharCode(...bytes.subarray(from, to));
  if (bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return "jpeg";
  if (ascii(0, 8) === "\x89PNG\r\n\x1a\n") return "png";
  if (ascii(0, 4) === "RIFF" && ascii(8, 12) === "WEBP") return "webp";
  if (["II*\0", "MM\0*", "II+\0", "MM\0+"].includes(ascii(0, 4))) return "tiff";
  if (ascii(4, 8) === "ftyp") return heifKind(ascii(8, 64));
  if (ascii(0, 4) === "GIF8") return "gif";
  if (ascii(0, 5) === "%PDF-") return "pdf";
  if (ascii(0, 2) === "BM") return "bmp";
  const start = new TextDecoder().decode(bytes.subarray(0, 1024)).replace(/^\uFEFF/, "");
  return /^\s*(<\?xml|<!doctype svg|<!--|<svg)/i.test(start) && /<svg/i.test(start)
    ? "svg"
    : "unknown";
}

/** AVIF and HEIC share a container; the brands after `ftyp` tell them apart (ISO/IEC 23008-12, AV1 image file format). */
function heifKind(brands: string): FileKind {
  if (/avif|avis/.test(brands)) return "avif";
  return /hei[cxms]|hev[cxms]|mif1|msf1/.test(brands) ? "heic" : "unknown";
}
