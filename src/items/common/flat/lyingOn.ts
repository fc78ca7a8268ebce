import { diagnostic } from "../../../diagnostics/diagnostic.ts";
import type { Length } from "../../../units/length.ts";
import type { ItemContext } from "../../itemKind.ts";
import type { Notes } from "../notes.ts";

/** A made-up bed: width, length, and the height of its top above the floor. */
export interface BedSize {
  readonly width: Length;
  readonly length: Length;
  readonly height: Length;
}

/**
 * The bed's measures from the item's own `bed`, else from the card of the bed that it lies on. Null, with a diagnostic at the item,
 * where neither is written: a mattress has no standard depth, so none is guessed.
 */
export function bedOf(
  fields: { readonly bed?: readonly Length[] | undefined },
  context: ItemContext,
  notes: Notes,
): BedSize | null {
  const size = fields.bed ?? context.host?.mattress;
  const [width, length, height] = size ?? [];
  if (width && length && height) return { width, length, height };
  notes.diagnostics.push(
    diagnostic(
      context.place(["bed"]),
      "bed-not-measured",
      context.host
        ? `Neither this item nor the card of ${context.host.name} says how large the made-up bed is.`
        : "It is not said how large the made-up bed is.",
      {
        expected: "width x length x height of the top",
        hint: `Write bed: here, or mattress: on the bed's card, for example 60" x 80" x 25" or 152 cm x 203 cm x 64 cm, measured with its bedding on.`,
      },
    ),
  );
  return null;
}

/** A table: its top's two measures and its height; round without corners, an oval where the two differ. */
export interface TableSize {
  readonly width: Length;
  readonly depth: Length;
  readonly height: Length;
  readonly round: boolean;
  readonly oval: boolean;
}

/** The table's measures from the item's own `table`, else from the card of the table that it lies on. */
export function tableOf(
  fields: {
    readonly table?: readonly Length[] | undefined;
    readonly form?: "round" | "oval" | "rectangular" | undefined;
  },
  context: ItemContext,
  notes: Notes,
): TableSize | null {
  const { host } = context;
  const card =
    host?.width && host.depth && host.height ? [host.width, host.depth, host.height] : [];
  const [width, depth, height] = fields.table ?? card;
  if (!width || !depth || !height) {
    notes.diagnostics.push(
      diagnostic(
        context.place(["table"]),
        "table-not-measured",
        "It is not said how large the table is.",
        {
          expected: "width x depth x height",
          hint: `Write table: here, or size: on the table's card, for example 60" x 36" x 29" or 152 cm x 91 cm x 74 cm. Of a round table width and depth are its diameter.`,
        },
      ),
    );
    return null;
  }
  const oval = fields.form === "oval";
  const round = fields.form
    ? oval || fields.form === "round"
    : fields.table
      ? false
      : host?.round === true;
  if (fields.form === "round" && !width.equals(depth)) {
    notes.diagnostics.push(
      diagnostic(
        context.place(["form"]),
        "round-table-not-round",
        "This table is said to be round, but its width and its depth differ.",
        {
          expected: "one diameter",
          hint: "Write the diameter twice, or form: oval.",
        },
      ),
    );
    return null;
  }
  return { width, depth, height, round, oval: round && !width.equals(depth) };
}
