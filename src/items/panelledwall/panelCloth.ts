import Fraction from "fraction.js";
import { diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { asNeeded, boughtLength } from "../common/boughtLength.ts";
import { centredPlace, hasMotif } from "../common/join/centredMotif.ts";
import type { JoinedPart } from "../common/join/joinedPart.ts";
import { gapQuestion, joinedCuts, joinPiece } from "../common/join/joinPiece.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext, ItemCut, MaterialNeed } from "../itemKind.ts";
import type { Panel } from "./layout.ts";
import type { PanelledWallFields } from "./schema.ts";
import type { PanelMeasures } from "./setOut.ts";

/** Of one panel of a row, its cloth as cut. */
export interface PanelCloth {
  readonly row: number;
  readonly cut: readonly [Length, Length];
  readonly parts: readonly JoinedPart[] | null;
}

/** What is stretched in the panels. */
export interface PanelCloths {
  readonly cuts: readonly ItemCut[];
  readonly cloths: readonly PanelCloth[];
  readonly materials: readonly MaterialNeed[];
  readonly centred: boolean;
}

/** Cloth stretched in panels: the field within the mouldings and a turn-in on each edge, row by row; nothing for painted panels. */
export function panelCloths(
  fields: PanelledWallFields,
  measures: PanelMeasures,
  good: readonly Panel[],
  context: ItemContext,
  notes: Notes,
): PanelCloths {
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const { moulding, rows } = measures;
  const materials: MaterialNeed[] = [];
  const facts = fields.cloth ? context.cloth(fields.cloth) : null;
  const cuts: ItemCut[] = [];
  const cloths: PanelCloth[] = [];
  let centred = false;
  if (fields.cloth && facts?.type === "wallcovering") {
    notes.diagnostics.push(
      diagnostic(
        context.place(["cloth"]),
        "paper-in-panels",
        `${facts.name} is a wallcovering; what is stretched in panels is cloth.`,
        {
          actual: fields.cloth,
          expected: "a cloth",
          hint: "Take cloth out here, and write an item wallpaper on this wall for the paper within the panels.",
        },
      ),
    );
  } else if (fields.cloth) {
    const motif = hasMotif(facts);
    if (fields.motif === "centred" && facts && !motif)
      notes.diagnostics.push(
        diagnostic(
          context.place(["motif"]),
          "no-motif-to-centre",
          `${facts.name} has no repeat on its card, so nothing can be centred.`,
          {
            severity: "warning",
            actual: "centred",
            expected: "as-it-falls",
            hint: "Write the repeat on the cloth's card, or motif: as-it-falls.",
          },
        ),
      );
    centred = motif && fields.motif !== "as-it-falls";
    const turn = context.length("turn-in");
    for (const row of [...new Set(good.map((q) => q.row))]) {
      const one = good.find((q) => q.row === row) as Panel;
      const field = [
        one.width.minus(moulding.times(2)),
        one.height.minus(moulding.times(2)),
      ] as const;
      const cut = [field[0].plus(turn.times(2)), field[1].plus(turn.times(2))] as const;
      const name = rows === 2 ? (row === 0 ? "upper panel" : "lower panel") : "panel";
      const because = `${printSize([one.width, one.height], units)} − 2 × ${p(moulding)} moulding + 2 × ${p(turn)} turn-in each way`;
      const usable = facts?.usableWidth ?? null;
      const wide = usable !== null && cut[0].isMoreThan(usable);
      const turns =
        !centred && facts?.mayTurn === true && usable !== null && !cut[1].isMoreThan(usable);
      const way = fields.join ?? "both-sides";
      const parts =
        wide && usable && !turns
          ? joinPiece(cut[0], usable, context.length("join-turning"), way, centred ? facts : null)
          : null;
      if (wide && !turns && parts === null)
        notes.diagnostics.push(
          diagnostic(
            context.place(["panels"]),
            "piece-wider-than-cloth",
            `The cloth of a panel is ${p(cut[0])} wide as cut; ${facts?.name} is ${p(usable as Length)}.`,
            {
              actual: p(cut[0]),
              hint: "Write more panels, join: both-sides, or choose a wider cloth.",
            },
          ),
        );
      const place = centred && !wide ? centredPlace(facts, ...cut) : null;
      if (place && !place.fits && place.widest)
        notes.diagnostics.push(
          diagnostic(
            context.place(["panels"]),
            "motif-does-not-fit",
            `The cloth of a panel is ${p(cut[0])} wide as cut; on ${facts?.name} the widest piece with a motif in its middle is ${p(place.widest)}.`,
            {
              actual: p(cut[0]),
              expected: `${p(place.widest)} or less`,
              hint: "Write more panels, motif: as-it-falls, or choose a wider cloth.",
            },
          ),
        );
      if (parts && !fields.join)
        notes.questions.push(
          `The ${name} is wider than its cloth and nothing is said of joins: a whole width in the middle and equal strips at the sides are taken.`,
        );
      const gap = parts && centred ? gapQuestion(facts, name, parts) : null;
      if (gap) notes.questions.push(gap);
      const base = {
        piece: name,
        surface: "panel",
        cloth: fields.cloth,
        width: cut[0],
        height: cut[1],
        count: fields.panels,
        because,
      };
      const series = `${fields["panelled-wall"]}, ${name}`;
      const matched = facts?.repeat != null && facts.repeat.match !== "free";
      if (parts) cuts.push(...joinedCuts(parts, base, facts, centred, series));
      else
        cuts.push({
          ...base,
          mayTurn: !centred && !matched && (facts?.mayTurn ?? false),
          across: place?.across ?? { how: "free" },
          // Panels of a row show the same part of the pattern at one height.
          along: place?.along ?? (matched ? { how: "level", series, joined: 0 } : { how: "free" }),
        });
      cloths.push({ row, cut, parts });
      notes.working.push({
        what: `Cloth of a ${name}, ${fields.panels} of them`,
        sum: because,
        result: printSize(cut, units),
        rounded: null,
      });
      const round = field[0].plus(field[1]).times(2).times(fields.panels);
      materials.push({
        ...boughtLength(rows === 2 ? `battens for the ${name}s` : "battens", round, units),
      });
      materials.push({
        what: `wadding ${printSize(field, units)}`,
        cloth: null,
        amount: new Fraction(fields.panels),
        unit: "piece",
        text: `${fields.panels} × wadding ${printSize(field, units)}`,
        by: "maker",
      });
      if (fields.trim) materials.push(boughtLength(fields.trim, round, units));
    }
    materials.push(asNeeded("staples, and tacks for the head"));
    notes.questions.push("Which sockets, switches and radiators stand within the panels?");
  } else if (good.length > 0) {
    notes.questions.push("Which sockets and switches fall on a moulding?");
  }
  return { cuts, cloths, materials, centred };
}
