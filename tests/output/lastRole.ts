import type { PDFPageProxy } from "pdfjs-dist/legacy/build/pdf.mjs";

interface Node {
  readonly role?: string;
  readonly id?: string;
  readonly children?: readonly Node[];
}

const isHead = (role: string): boolean => /^H\d?$/.test(role);

/** The roles of a tree's content in order, a heading's only where its marked content bears words. */
function contentRoles(node: Node, role: string, worded: ReadonlySet<string>): string[] {
  const own = isHead(role) ? role : (node.role ?? role);
  if (node.children) return node.children.flatMap((child) => contentRoles(child, own, worded));
  if (node.id === undefined) return [];
  return isHead(own) && !worded.has(node.id) ? [] : [own];
}

/**
 * The role of the last content on a page: of a heading alone at its foot, the heading's. A heading that begins the next page leaves
 * an empty mark at this one's foot, which does not count.
 */
export async function lastRole(page: PDFPageProxy): Promise<string> {
  const worded = new Set<string>();
  const open: string[] = [];
  for (const item of (await page.getTextContent({ includeMarkedContent: true })).items) {
    if ("type" in item) {
      if (item.type === "endMarkedContent") open.pop();
      else open.push((item as { id?: string }).id ?? "");
    } else if (item.str.trim() !== "") for (const id of open) worded.add(id);
  }
  const tree = (await page.getStructTree()) as Node | null;
  return tree ? (contentRoles(tree, "", worded).at(-1) ?? "") : "";
}
