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

/** Lengths that are sold: a braid and a hide have them too. */
const SOLD: readonly Usual[] = [
  {
    path: ["roll", "length"],
    what: "This roll",
    least: NONE,
    most: Length.cm(6000),
    said: "long; most rolls are about 10 m (11 yd) long, and few over 50 m",
  },
  {
    path: ["price", "minimum"],
    what: "The shortest length that is sold",
    least: NONE,
    most: Length.cm(6000),
    said: "long; few suppliers ask for more than some metres or yards, and none for more than a bolt",
  },
  {
    path: ["price", "bolt", "length"],
    what: "This bolt",
    least: Length.cm(500),
    most: Length.cm(20_000),
    said: "long; bolts are mostly 25 to 60 m long",
  },
];

/** What has no selvedges: a braid is narrow, and a hide as wide as the animal. */
const UNWOVEN = new Set(["trim", "leather"]);

/**
 * A warning where the first motif is said to stand further from the left selvedge than the pattern takes to come again, or than the cloth is
 * wide: another one stands before it, or none there.
 */
function firstMotif(card: Card, textAt: (path: Path) => string | null): Diagnostic[] {
  const path = ["repeat", "from-selvedge"];
  const lengthAt = (at: Path) => {
    const read = parseLength(textAt(at) ?? "");
    return read.ok ? read.length : null;
  };
  const motif = lengthAt(path);
  const within = [["repeat", "across"], ["width"], ["roll", "width"]].find((at) => lengthAt(at));
  const most = within && lengthAt(within);
  if (!motif || !within || !most || !motif.isMoreThan(most)) return [];
  return [
    complain(card, path, {
      code: "size-unlikely",
      severity: "warning",
      message: `The first motif stands ${textAt(path)} from the left selvedge, and ${within[0] === "repeat" ? "the pattern comes again every" : "the cloth is"} ${textAt(within)}${within[0] === "repeat" ? "" : " wide"}.`,
      actual: textAt(path),
      hint: "Look at its unit and its point; it is measured to the middle of the motif nearest the left selvedge.",
    }),
  ];
}

/** Warnings where a card's width or repeat is one that no cloth has: a unit or a point is wrong, and all that is cut of it with it. */
export function checkCardSizes(card: Card): Diagnostic[] {
  const textAt = (path: Path) => {
    const node = nodeAt(card.root, path);
    return node?.kind === "text" ? node.text.trim() : null;
  };
  const sizes = UNWOVEN.has(textAt(["type"]) ?? "") ? SOLD : [...SIZES, ...SOLD];
  const unlikely = sizes.flatMap(({ path, what, least, most, said }) => {
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
  return [...unlikely, ...firstMotif(card, textAt)];
}
