import { readFile } from "node:fs/promises";
import { inflateSync } from "node:zlib";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import sharp from "sharp";

/** The packed streams of a PDF, unpacked; a stream that is not deflated is searched as its bytes are. */
export function inflatedStreams(bytes: Buffer): string[] {
  const out: string[] = [];
  let from = bytes.indexOf("stream");
  while (from >= 0) {
    const start = bytes[from + 6] === 13 ? from + 8 : from + 7;
    const end = bytes.indexOf("endstream", start);
    if (end < 0) break;
    try {
      out.push(inflateSync(bytes.subarray(start, end)).toString("latin1"));
    } catch {
      // Not a deflated stream.
    }
    from = bytes.indexOf("stream", end + 9);
  }
  return out;
}

/** All that a file says to anyone who looks: bytes, inflated streams, text, metadata. */
export async function said(path: string): Promise<string> {
  const bytes = await readFile(path);
  const parts = [bytes.toString("latin1"), bytes.toString("utf8")];
  if (path.endsWith(".pdf")) {
    parts.push(...inflatedStreams(bytes));
    const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
    parts.push(JSON.stringify(await document.getMetadata()));
    for (let at = 1; at <= document.numPages; at++) {
      const text = await (await document.getPage(at)).getTextContent();
      parts.push(text.items.map((item) => ("str" in item ? item.str : "")).join(""));
    }
    await document.loadingTask.destroy();
  }
  if (path.endsWith(".jpg")) {
    const { exif, xmp, iptc, icc } = await sharp(path).metadata();
    parts.push(...[exif, xmp, iptc, icc].map((block) => block?.toString("latin1") ?? ""));
  }
  return parts.join("\n");
}
