import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { ProjectRecord } from "../../records/records.ts";
import { Length } from "../../units/length.ts";

/** One receipt of a project's file. */
export type Receipt = NonNullable<ProjectRecord["fields"]["receipts"]>[number];

/** The receipts of what is here, without what went back to its supplier. */
export function keptReceipts({ fields }: Pick<ProjectRecord, "fields">): Receipt[] {
  return (fields.receipts ?? []).filter(({ returned }) => returned === undefined);
}

/** What of a card went back, in the order of the file. */
export function returnedOf(card: string, { fields }: Pick<ProjectRecord, "fields">): Receipt[] {
  return (fields.receipts ?? []).filter((each) => each.cloth === card && each.returned);
}

/** How much of a card went back and was credited: it was ordered once, and no longer counts as ordered. */
export function creditedOf(card: string, project: Pick<ProjectRecord, "fields">): Length {
  const credited = returnedOf(card, project).filter(({ returned }) => returned?.for === "credit");
  return Length.sum(credited.map(({ length }) => length));
}

/** A warning where a cloth is released to cut that went back, or where it went back before it came. */
export function returnFaults(project: ProjectRecord): Diagnostic[] {
  return (project.fields.receipts ?? []).flatMap(({ returned, released, on, cloth }, at) => {
    const fault = (path: readonly string[], code: string, message: string, hint: string) =>
      diagnostic(project.place(["receipts", at, ...path]), code, message, {
        severity: "warning",
        hint,
      });
    if (!returned) return [];
    return [
      ...(released
        ? [
            fault(
              ["released"],
              "returned-and-released",
              `This length of ${cloth} went back on ${returned.on}, and is released to cut as well.`,
              "Take one of the two out: nothing is planned on what went back.",
            ),
          ]
        : []),
      ...(on !== undefined && returned.on < on
        ? [
            fault(
              ["returned", "on"],
              "days-out-of-order",
              `This went back on ${returned.on}, before it came, on ${on}.`,
              "Look which of the two days is wrong; often it is the year.",
            ),
          ]
        : []),
    ];
  });
}
