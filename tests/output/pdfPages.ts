import { readFile } from "node:fs/promises";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

/** The letters and figures of each page of a PDF, without what stands between them: spaces and line breaks are the browser's. */
export async function pdfPages(file: string): Promise<string[]> {
  const data = new Uint8Array(await readFile(file));
  const pdf = await getDocument({ data, verbosity: 0 }).promise;
  const pages: string[] = [];
  for (let at = 1; at <= pdf.numPages; at++) {
    const { items } = await (await pdf.getPage(at)).getTextContent();
    const text = items.map((i) => ("str" in i ? i.str : "")).join("");
    pages.push(text.replace(/[^a-z\d]/gi, ""));
  }
  await pdf.loadingTask.destroy();
  return pages;
}
