import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { parseLength } from "../../units/parseLength.ts";
import { nodeAt, type Path } from "../frontMatter/node.ts";
import { type Card, complain } from "../reading/card.ts";

/** A measure of a card, and between what it lies; common practice, no source: looms and printing machines set the limits. */
interface Usual {
  readonly path: Path;
  readonly what: string;
  readonly least: Length;
  readonly most: Length;
  readonly said: string;
}

const WIDEST = Length.cm(350);
const NONE = Length.zero;
const SIZES: readonly Usual[] = [
  {
    path: ["width"],
    what: "This cloth",
    least: Length.cm(30),
    most: WIDEST,
    said: "wide; cloth is 30 to 350 cm (12 to 138 in) wide, mostly about 140 cm (54 in)",
  },
  {
    path: ["repeat", "up"],
    what: "This pattern",
    least: NONE,
    most: WIDEST,
    said: "high to where it repeats; few repeats are over 1 m (40 in)",
  },
  {
    path: ["repeat", "across"],
    what: "This pattern",
    least: NONE,
    most: WIDEST,
    said: "wide to where it repeats; few repeats are wider than the cloth",
  },
  {
    path: ["roll", "width"],
    what: "This roll",
    least: NONE,
    most: WIDEST,
    said: "wide; most rolls are 52 to 70 cm (20 1/2 to 27 in) wide",
  },
];

/** What has no selvedges: a braid is narrow, and a hide as wide as the animal. */
const UNWOVEN = new Set(["trim", "leather"]);

/** Warnings where a card's width or repeat is one that no cloth has: a unit or a point is wrong, and all that is cut of it with it. */
export function checkCardSizes(card: Card): Diagnostic[] {
  const textAt = (path: Path) => {
    const node = nodeAt(card.root, path);
    return node?.kind === "text" ? node.text.trim() : null;
  };
  if (UNWOVEN.has(textAt(["type"]) ?? "")) return [];
  return SIZES.flatMap(({ path, what, least, most, said }) => {
    const text = textAt(path);
    const read = text === null ? null : parseLength(text);
    if (!read?.ok || !(read.length.isLessThan(least) || read.length.isMoreThan(most))) return [];
    return [
      complain(card, path, {
        code: "size-unlikely",
        severity: "warning",
        message: `${what} is ${text} ${said}.`,
        actual: text,
        hint: "Look at its unit and its point.",
      }),
    ];
  });
}
