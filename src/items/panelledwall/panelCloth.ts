import type { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { asNeeded, boughtAs, boughtLength } from "../common/boughtLength.ts";
import { hasMotif } from "../common/join/centredMotif.ts";
import type { JoinedPart } from "../common/join/joinedPart.ts";
import { shownInMiddle } from "../common/join/joinPiece.ts";
import { noMotifToCentre } from "../common/join/motifFaults.ts";
import type { Notes } from "../common/notes.ts";
import { trimNeed } from "../common/trim.ts";
import type { ClothFacts, ItemContext, ItemCut, MaterialNeed } from "../itemKind.ts";
import type { Panel } from "./layout.ts";
import { paperInPanels } from "./panelFaults.ts";
import { panelPlace } from "./panelPlace.ts";
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
  /** What stands in the middle of each panel. */
  readonly shows: PanelShows;
}

/** A motif; where a panel is joined of whole widths perhaps the gap between two; or what falls there. */
export type PanelShows = "motif" | "gap" | "as-it-falls";

/** Cloth stretched in panels: the field within the mouldings and a turn-in on each edge, row by row; nothing for painted panels. */
export function panelCloths(
  fields: PanelledWallFields,
  measures: PanelMeasures,
  good: readonly Panel[],
  context: ItemContext,
  notes: Notes,
): PanelCloths {
  const none = { cuts: [], cloths: [], materials: [], shows: "as-it-falls" } as const;
  if (!fields.cloth) {
    if (good.length > 0) notes.questions.push("Which sockets and switches fall on a moulding?");
    return none;
  }
  const facts = context.cloth(fields.cloth);
  if (facts?.type === "wallcovering") {
    notes.diagnostics.push(paperInPanels(fields.cloth, facts, context));
    return none;
  }
  const motif = hasMotif(facts);
  if (fields.motif === "centred" && facts && !motif)
    notes.diagnostics.push(noMotifToCentre(facts, "motif", context));
  const centred = motif && fields.motif !== "as-it-falls";
  const turn = context.length("turn-in");
  const rows = [...new Set(good.map((panel) => panel.row))].map((row) => {
    const panel = good.find((each) => each.row === row) as Panel;
    return panelOfRow(fields, measures, { panel, facts, centred, turn }, context, notes);
  });
  notes.questions.push("Which sockets, switches and radiators stand within the panels?");
  return {
    cuts: rows.flatMap((row) => row.cuts),
    cloths: rows.map((row) => row.cloth),
    materials: [
      ...rows.flatMap((row) => row.materials),
      asNeeded("staples, and tacks for the head"),
    ],
    shows: centred ? shownInMiddle(facts, rows[0]?.cloth.parts ?? null) : "as-it-falls",
  };
}

/** One panel of a row, and the cloth that is stretched in it. */
interface RowAsk {
  readonly panel: Panel;
  readonly facts: ClothFacts | null;
  readonly centred: boolean;
  /** Turned in on each edge. */
  readonly turn: Length;
}

/** The cloth of all panels of a row, with what it is stretched on. */
function panelOfRow(
  fields: PanelledWallFields,
  { moulding, rows }: PanelMeasures,
  { panel, facts, centred, turn }: RowAsk,
  context: ItemContext,
  notes: Notes,
): { readonly cuts: ItemCut[]; readonly cloth: PanelCloth; readonly materials: MaterialNeed[] } {
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const within = moulding.times(2);
  const field = [panel.width.minus(within), panel.height.minus(within)] as const;
  const cut = [field[0].plus(turn.times(2)), field[1].plus(turn.times(2))] as const;
  const name = rows === 2 ? (panel.row === 0 ? "upper panel" : "lower panel") : "panel";
  const because = `${printSize([panel.width, panel.height], units)} − 2 × ${p(moulding)} moulding + 2 × ${p(turn)} turn-in each way`;
  const { cuts, parts } = panelPlace(
    fields,
    { name, cut, because, facts, centred },
    context,
    notes,
  );
  notes.working.push({
    what: `Cloth of ${name === "upper panel" ? "an" : "a"} ${name}, ${fields.panels} of them`,
    sum: because,
    result: printSize(cut, units),
    rounded: null,
  });
  const round = field[0].plus(field[1]).times(2).times(fields.panels);
  const wadding = `wadding ${printSize(field, units)}`;
  return {
    cuts,
    cloth: { row: panel.row, cut, parts },
    materials: [
      boughtLength(rows === 2 ? `battens for the ${name}s` : "battens", round, units),
      boughtAs(wadding, `${fields.panels} × ${wadding}`, fields.panels),
      ...edgeTrim(fields, field, round, context),
    ],
  };
}

/** What covers the edges of a row's cloth: by the length that its card is bought in, or, said in words, what its maker brings. */
function edgeTrim(
  { trim, panels }: PanelledWallFields,
  [width, height]: readonly [Length, Length],
  round: Length,
  context: ItemContext,
): MaterialNeed[] {
  if (!trim) return [];
  if (context.cloth(trim)) return [trimNeed(trim, width.plus(height).times(2), panels, context)];
  return [boughtLength(trim, round, context.units)];
}
