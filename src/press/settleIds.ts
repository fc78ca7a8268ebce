import {
  PDFArray,
  PDFDict,
  type PDFDocument,
  PDFName,
  type PDFObject,
  PDFRef,
  PDFString,
} from "@cantoo/pdf-lib";

/**
 * Gives the structure's elements names that depend on the document alone (ISO 32000-1, 14.7.2): numbers in
 * the order in which they stand in the file. Chromium takes the numbers of its nodes, which differ from
 * print to print, so that table cells and what refers to them would not be the same bytes twice.
 */
export function settleIds(pdf: PDFDocument): void {
  const root = pdf.catalog.lookupMaybe(PDFName.of("StructTreeRoot"), PDFDict);
  const tree = root?.lookupMaybe(PDFName.of("IDTree"), PDFDict);
  if (tree === undefined) return;
  const elements = pdf.context
    .enumerateIndirectObjects()
    .map(([, object]) => object)
    .filter((object) => object instanceof PDFDict)
    .filter((object) => object.get(TYPE) === PDFName.of("StructElem"));
  const names = new Map<string, PDFString>();
  for (const element of elements) {
    const id = element.lookupMaybe(ID, PDFString);
    if (id === undefined) continue;
    const name = PDFString.of(`n${String(names.size + 1).padStart(6, "0")}`);
    names.set(id.asString(), name);
    element.set(ID, name);
  }
  for (const element of elements) renameHeaders(element.lookup(PDFName.of("A")), names);
  flatten(pdf, tree, names);
}

const TYPE = PDFName.of("Type");
const ID = PDFName.of("ID");

/** A table cell's attributes name its heads (14.8.5.7): one dictionary, or several in a list. */
function renameHeaders(
  attributes: PDFObject | undefined,
  names: ReadonlyMap<string, PDFString>,
): void {
  if (attributes instanceof PDFArray) {
    for (let i = 0; i < attributes.size(); i++) renameHeaders(attributes.lookup(i), names);
  }
  if (!(attributes instanceof PDFDict)) return;
  const heads = attributes.lookup(PDFName.of("Headers"));
  if (!(heads instanceof PDFArray)) return;
  for (let i = 0; i < heads.size(); i++) {
    const head = heads.lookup(i);
    const name = head instanceof PDFString ? names.get(head.asString()) : undefined;
    if (name !== undefined) heads.set(i, name);
  }
}

/** The name tree (7.9.6) is sorted by name; with the new names it is written as one node. */
function flatten(pdf: PDFDocument, tree: PDFDict, names: ReadonlyMap<string, PDFString>): void {
  const entries: [string, PDFObject][] = [];
  const walk = (node: PDFDict): void => {
    const own = node.lookupMaybe(PDFName.of("Names"), PDFArray);
    for (let i = 0; i + 1 < (own?.size() ?? 0); i += 2) {
      const name = names.get(own?.lookup(i, PDFString).asString() ?? "");
      const element = own?.get(i + 1);
      if (name !== undefined && element !== undefined) entries.push([name.asString(), element]);
    }
    const kids = node.lookupMaybe(PDFName.of("Kids"), PDFArray);
    for (let i = 0; i < (kids?.size() ?? 0); i++) {
      walk(kids?.lookup(i, PDFDict) as PDFDict);
      const reference = kids?.get(i);
      if (reference instanceof PDFRef) pdf.context.delete(reference);
    }
  };
  walk(tree);
  entries.sort(([a], [b]) => (a < b ? -1 : 1));
  const list = pdf.context.obj([]) as PDFArray;
  for (const [name, element] of entries) {
    list.push(PDFString.of(name));
    list.push(element);
  }
  tree.delete(PDFName.of("Kids"));
  tree.delete(PDFName.of("Limits"));
  tree.set(PDFName.of("Names"), list);
}
