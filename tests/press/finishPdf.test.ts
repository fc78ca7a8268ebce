import { PDFArray, PDFDict, PDFDocument, PDFName, PDFString } from "@cantoo/pdf-lib";
import { expect, test } from "vitest";
import { finishPdf, pdfDate, relativeAddress } from "../../src/press/finishPdf.ts";

test.each([
  ["https://roomcloth.invalid/client/quay/b.html", "client/quay/a.pdf", "b.html"],
  ["https://roomcloth.invalid/client/quay/b.html#x", "client/quay/den/index.pdf", "../b.html#x"],
  ["https://roomcloth.invalid/client/quay/a%20%C2%BD.html", "client/quay/a.pdf", "a%20%C2%BD.html"],
  ["https://roomcloth.invalid/a/a.html?x=1", "a/a.pdf", "a.html?x=1"],
  ["https://example.org/x", "a/a.pdf", "https://example.org/x"],
  ["mailto:studio@example.org", "a/a.pdf", "mailto:studio@example.org"],
])("the address %s in %s is %s", (address, from, expected) => {
  expect(relativeAddress(address, from)).toBe(expected);
});

// ISO 32000-1, 7.9.4: D:YYYYMMDDHHmmSSOHH'mm'.
test.each([
  ["2026-10-02", "D:20261002000000+00'00'"],
  ["2026-10-02T09:08:07Z", "D:20261002090807+00'00'"],
  ["2026-10-02T01:00:00+02:00", "D:20261001230000+00'00'"],
])("the date %s is written %s", (instant, expected) => {
  expect(pdfDate(instant)).toBe(expected);
});

test("what is no date is a mistake of ours", () => {
  expect(() => pdfDate("soon")).toThrow("not a date");
});

/** A PDF with a table's structure as Chromium writes it: heads named by numbers that mean nothing. */
async function table(numbers: readonly number[]): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  pdf.addPage();
  const { context, catalog } = pdf;
  const name = (number: number) => PDFString.of(`node${String(number).padStart(8, "0")}`);
  const heads = numbers.map((number) =>
    context.register(context.obj({ Type: "StructElem", S: "TH", ID: name(number) })),
  );
  for (const number of numbers) {
    const attributes = context.obj({ O: "Table", Headers: [name(number)] });
    context.register(context.obj({ Type: "StructElem", S: "TD", A: [attributes] }));
  }
  const sorted = numbers.map((number, at) => ({ number, at })).sort((a, b) => a.number - b.number);
  const leaf = (part: typeof sorted) =>
    context.register(
      context.obj({
        Limits: [name(part[0]?.number ?? 0), name(part.at(-1)?.number ?? 0)],
        Names: part.flatMap(({ number, at }) => [name(number), heads[at] as never]),
      }),
    );
  const tree = context.register(
    context.obj({ Kids: [leaf(sorted.slice(0, 2)), leaf(sorted.slice(2))] }),
  );
  const root = context.register(context.obj({ Type: "StructTreeRoot", IDTree: tree }));
  catalog.set(PDFName.of("StructTreeRoot"), root);
  return pdf.save({ useObjectStreams: false });
}

const FACTS = { title: "T", language: "en", instant: null, path: "a.pdf" };

test("the names of table heads do not depend on the browser's counting, and still lead to the heads", async () => {
  const finished = await finishPdf(await table([334, 12, 500]), FACTS);
  const other = await finishPdf(await table([7, 99, 8]), FACTS);
  expect(Buffer.from(finished).equals(Buffer.from(other))).toBe(true);
  const pdf = await PDFDocument.load(finished);
  const tree = pdf.catalog
    .lookup(PDFName.of("StructTreeRoot"), PDFDict)
    .lookup(PDFName.of("IDTree"), PDFDict);
  const list = tree.lookup(PDFName.of("Names"), PDFArray);
  const found = new Map<string, string>();
  for (let i = 0; i < list.size(); i += 2) {
    const head = list.lookup(i + 1, PDFDict);
    found.set(
      list.lookup(i, PDFString).asString(),
      head.lookup(PDFName.of("ID"), PDFString).asString(),
    );
  }
  // Sorted, and each name leads to the element that bears it.
  expect([...found.keys()]).toEqual([...found.keys()].sort());
  expect([...found.keys()]).toEqual([...found.values()]);
  expect(found.size).toBe(3);
  const headers = pdf.context
    .enumerateIndirectObjects()
    .flatMap(([, object]) => (object instanceof PDFDict ? [object.lookup(PDFName.of("A"))] : []))
    .filter((one) => one instanceof PDFArray)
    .map((one) =>
      one
        .lookup(0, PDFDict)
        .lookup(PDFName.of("Headers"), PDFArray)
        .lookup(0, PDFString)
        .asString(),
    );
  expect(headers).toEqual([...found.keys()]);
});
