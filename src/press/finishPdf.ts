import { posix } from "node:path";
import { PDFArray, PDFDict, PDFDocument, PDFHexString, PDFName, PDFString } from "@cantoo/pdf-lib";
import { exactSheet } from "./exactSheet.ts";
import { OUTPUT_ORIGIN, pathOf } from "./outputOrigin.ts";
import { settleIds } from "./settleIds.ts";

/** What a finished PDF says about itself. */
export interface PdfFacts {
  readonly title: string;
  /** BCP 47, for example en-US. */
  readonly language: string;
  /** The date that it bears, as an ISO instant; null leaves dates out. */
  readonly instant: string | null;
  /** Its own path below the output root; links to other documents become relative to it. */
  readonly path: string;
}

const MAKER = "roomcloth";

/**
 * Gives a printed PDF its title, language and date, names no program version, folder or file name, and
 * makes links to our other documents relative, and every page the exact size of its sheet. Tags, outline, fonts and pictures stay as printed. The
 * same bytes and facts give the same bytes.
 */
export async function finishPdf(printed: Uint8Array, facts: PdfFacts): Promise<Uint8Array> {
  const pdf = await PDFDocument.load(printed, { updateMetadata: false });
  const { context, catalog } = pdf;
  const date = facts.instant === null ? null : pdfDate(facts.instant);
  const info = context.obj({
    Title: PDFHexString.fromText(facts.title),
    Creator: PDFString.of(MAKER),
    Producer: PDFString.of(MAKER),
    ...(date === null ? {} : { CreationDate: PDFString.of(date), ModDate: PDFString.of(date) }),
  });
  const old = context.trailerInfo.Info;
  context.trailerInfo.Info = context.register(info);
  if (old !== undefined && "objectNumber" in old) context.delete(old as never);
  catalog.set(PDFName.of("Lang"), PDFString.of(facts.language));
  const xmp = context.stream(new TextEncoder().encode(metadata(facts)), {
    Type: "Metadata",
    Subtype: "XML",
  });
  catalog.set(PDFName.of("Metadata"), context.register(xmp));
  for (const page of pdf.getPages()) {
    const { width, height } = page.getMediaBox();
    const sheet = exactSheet(width, height);
    if (sheet) {
      // The page is laid out from its upper left corner: what is a hair too much goes at the right and at the foot.
      const box = [0, height - sheet.height, sheet.width, sheet.height] as const;
      page.setMediaBox(...box);
      page.setCropBox(...box);
    }
    const annotations = page.node.lookupMaybe(PDFName.of("Annots"), PDFArray);
    for (let i = 0; i < (annotations?.size() ?? 0); i++) {
      finishLink(annotations?.lookupMaybe(i, PDFDict), facts.path);
    }
  }
  settleIds(pdf);
  return pdf.save({
    useObjectStreams: false,
    addDefaultPage: false,
    updateFieldAppearances: false,
  });
}

function finishLink(annotation: PDFDict | undefined, from: string): void {
  const action = annotation?.lookupMaybe(PDFName.of("A"), PDFDict);
  const uri = action?.lookup(PDFName.of("URI"));
  if (!(uri instanceof PDFString || uri instanceof PDFHexString)) return;
  const address = relativeAddress(uri.decodeText(), from);
  action?.set(PDFName.of("URI"), PDFString.of(address));
  // Readers aloud speak this; PDF/UA (ISO 14289-1, 7.18.5) asks for it on every link.
  annotation?.set(PDFName.of("Contents"), PDFHexString.fromText(address));
}

/** A link as it goes into the PDF: relative where it leads to one of our own documents. */
export function relativeAddress(address: string, from: string): string {
  const path = pathOf(address);
  if (path === null) return address.replace(`${OUTPUT_ORIGIN}/`, "");
  const { search, hash } = new URL(address);
  const relative = posix.relative(posix.dirname(from), path) || posix.basename(path);
  return relative.split("/").map(encodeURIComponent).join("/") + search + hash;
}

/** `D:YYYYMMDDHHmmSS+00'00'` (ISO 32000-1, 7.9.4) of an ISO date or instant, in UTC. */
export function pdfDate(instant: string): string {
  const date = new Date(instant);
  if (Number.isNaN(date.getTime())) throw new Error(`not a date: ${instant}`);
  const digits = date.toISOString().slice(0, 19).replace(/[-:T]/g, "");
  return `D:${digits}+00'00'`;
}

function metadata(facts: PdfFacts): string {
  const date = facts.instant === null ? null : new Date(facts.instant).toISOString();
  const dates =
    date === null
      ? ""
      : `<xmp:CreateDate>${date}</xmp:CreateDate><xmp:ModifyDate>${date}</xmp:ModifyDate>`;
  // The first line's attribute is the byte-order mark that XMP (ISO 16684-1) prescribes.
  return [
    '<?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>',
    '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">',
    '<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">',
    `<dc:title><rdf:Alt><rdf:li xml:lang="x-default">${escapeXml(facts.title)}</rdf:li></rdf:Alt></dc:title>`,
    `<dc:language><rdf:Bag><rdf:li>${escapeXml(facts.language)}</rdf:li></rdf:Bag></dc:language>`,
    `<dc:format>application/pdf</dc:format><pdf:Producer>${MAKER}</pdf:Producer>`,
    `<xmp:CreatorTool>${MAKER}</xmp:CreatorTool>${dates}`,
    '</rdf:Description></rdf:RDF></x:xmpmeta><?xpacket end="r"?>',
  ].join("\n");
}

function escapeXml(text: string): string {
  return text.replace(/[<>&"']/g, (mark) => `&#${mark.charCodeAt(0)};`);
}
