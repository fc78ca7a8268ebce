import type { FinishedCost } from "../../money/alternatives.ts";
import { capital } from "../../units/capital.ts";
import type { Money } from "../../units/money.ts";
import { money, printMoney, subtractMoney } from "../../units/money.ts";
import { wordsIn } from "../../units/spelling.ts";
import { clothSwatch } from "../pictures/clothSwatch.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ChoiceOption, ProjectData } from "../projectData.ts";
import type { Markup } from "../words/marks.ts";
import { listed } from "../words/phrases.ts";

/** One way to make an item, as the client reads it: nothing of it but its own look, its finished cost and what it changes. */
export interface OptionColumn {
  readonly title: string;
  readonly swatches: readonly Markup[];
  readonly cloths: string;
  /** What the item comes to finished; null while it has no price. */
  readonly sum: string | null;
  /** What it does to the total, in words. */
  readonly difference: string;
  readonly changes: readonly string[];
}

/** An item that the client has still to choose about. */
export interface OptionBlock {
  readonly title: string;
  readonly room: string;
  readonly columns: readonly OptionColumn[];
}

/** A swatch in an option, in millimetres on paper; cloth stands at one quarter of its size. */
const SWATCH = { width: 30, height: 22, scale: 4, name: "option-swatch" };

function differenceWords(more: Money, stands: boolean, print: (m: Money) => string): string {
  if (stands) return "As drawn, and in the total.";
  if (more.minor === 0n) return "The total stays the same.";
  return more.minor > 0n
    ? `Adds ${print(more)} to the total.`
    : `Takes ${print(subtractMoney(money(0, more.currency), more))} off the total.`;
}

/** False while nothing but prices to come would stand in it. */
const hasPrice = ({ client, open }: FinishedCost): boolean => !open || client.minor !== 0n;

/** The cloths by which an option is known: its face, cover or paper, then the others that are seen. */
function seenIn(option: ChoiceOption): string[] {
  const hidden = new Set(["lining", "interlining", "welt", "trim"]);
  const first = new Set(["face", "cover", "paper"]);
  const seen = option.uses.filter((use) => !hidden.has(use.surface));
  const order = [...seen].sort(
    (a, b) => Number(first.has(b.surface)) - Number(first.has(a.surface)),
  );
  return [...new Set(order.map((use) => use.cloth))];
}

/** The items with options that are still open, each with its ways side by side. Client prices only. */
export function optionBlocks(data: ProjectData, book: PictureBook, prefix: string): OptionBlock[] {
  const { language } = data.studio.fields;
  const say = wordsIn(language);
  const print = (sum: Money): string => printMoney(sum, language, true);
  return data.choices
    .filter((choice) => choice.open && choice.options.length > 0)
    .map((choice, at): OptionBlock => {
      const room = data.rooms.find((each) => each.record.id === choice.room);
      const item = room?.items.find((each) => each.record.id === choice.item);
      const column = (option: ChoiceOption, n: number): OptionColumn => {
        const shown = seenIn(option)
          .slice(0, 2)
          .flatMap((id) => data.swatches.get(id) ?? []);
        const lining = option.uses.find((use) => use.surface === "lining")?.cloth;
        const lined = lining ? data.records.cloths.get(lining)?.fields.cloth : undefined;
        const names = listed(shown.map((swatch) => swatch.name));
        const { cost } = option.priced;
        return {
          title: option.title,
          swatches: shown
            .slice(0, 2)
            .map((swatch, k) => clothSwatch(swatch, book, SWATCH, `${prefix}-${at}-${n}-${k}`)),
          cloths: lined ? say`${names}, lined with ${lined}` : names,
          sum: hasPrice(cost) ? `${print(cost.client)}${cost.open ? " *" : ""}` : null,
          difference: hasPrice(cost)
            ? differenceWords(option.priced.more, option.stands, print)
            : option.stands
              ? "As drawn."
              : "",
          changes: option.changes.client,
        };
      };
      const kind = item?.kind.words[language as "en-US"].one ?? "";
      return {
        title: item ? `${item.record.title}, ${kind}` : say`An item`,
        room: data.rooms.length > 1 ? capital(room?.record.fields.room ?? "") : "",
        columns: choice.options.map(column),
      };
    });
}
