import { diagnostic } from "../../diagnostics/diagnostic.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import type { Notes } from "./notes.ts";

/** What is wrong with a cloth for a piece, in words, and how to mend it. */
export interface ClothFault {
  readonly code: string;
  readonly message: string;
  readonly hint: string;
}

/** Says at the line that names the cloth what is wrong with it there. */
export function clothFault(
  keyPath: readonly (string | number)[],
  cloth: ClothFacts,
  context: ItemContext,
  notes: Notes,
  { code, message, hint }: ClothFault,
): void {
  const place = context.place(keyPath);
  notes.diagnostics.push(diagnostic(place, code, message, { actual: cloth.id, hint }));
}
