import { hasErrors } from "../diagnostics/diagnostic.ts";
import type { ItemContext, ItemKind, Made } from "../items/itemKind.ts";
import type { ItemRecord } from "../records/records.ts";
import { Length } from "../units/length.ts";
import { printCloth } from "../units/printLength.ts";

const piecesOf = (made: Made, cloth: string): number =>
  made.cuts.reduce((n, cut) => (cut.cloth === cloth ? n + cut.count : n), 0);

const clothOf = (made: Made, cloth: string): Length =>
  Length.sum(made.handbook.flatMap((each) => (each.cloth === cloth ? [each.length] : [])));

/**
 * What an item that is run sideways comes to, with the same unturned beside it: both lengths by the handbook in its working. As it says
 * (`railroad: yes`): with a question where unturned it takes less cloth in no more pieces, so that turning saves no join. Of itself, as a
 * plain is to save a join: where that takes more cloth. The same as it was made where it is not run sideways, or cannot be made
 * unturned. `freshContext` gives one of its own, since it is asked again.
 */
export function withUnturned(
  made: Made,
  record: ItemRecord,
  kind: ItemKind,
  freshContext: () => ItemContext,
): Made {
  const fields = record.fields as Readonly<Record<string, unknown>>;
  const { railroad, cloth, ...rest } = fields;
  if (railroad === false || typeof cloth !== "string" || hasErrors(made.diagnostics)) return made;
  const context = freshContext();
  const ofItself = railroad === undefined;
  if (ofItself && context.cloth(cloth)?.mayTurn !== true) return made;
  const said = ofItself ? { railroad: false } : {};
  const other = kind.make({ ...rest, cloth, ...said } as never, context) as Made;
  if (hasErrors(other.diagnostics) || other.cuts.length === 0) return made;
  const [turned, unturned] = [clothOf(made, cloth), clothOf(other, cloth)];
  if (unturned.equals(turned)) return made;
  const print = (length: Length) => printCloth(length, context.units);
  const joins = piecesOf(other, cloth) - piecesOf(made, cloth);
  const more = joins > 0 ? `, in ${joins} more ${joins === 1 ? "piece" : "pieces"}` : "";
  const name = context.cloth(cloth)?.name ?? cloth;
  const isLess = unturned.isLessThan(turned);
  if (ofItself && !isLess) return made;
  const asks = !ofItself && joins <= 0 && isLess;
  const way = ofItself
    ? `${print(turned)} as it is run sideways to save joins; with railroad: no`
    : `${print(turned)} as it is run sideways; without railroad: yes`;
  return {
    ...made,
    working: [
      ...made.working,
      {
        what: "The same unturned, by the handbook",
        sum: `${way}${more}`,
        result: print(unturned),
        rounded: null,
      },
    ],
    questions: [
      ...made.questions,
      ...(asks
        ? [
            `Run sideways it takes ${print(turned)} of ${name} by the handbook; unturned it would take ${print(unturned)}, with no more joins: is it to run sideways all the same?`,
          ]
        : []),
    ],
  };
}
