import type { Length } from "../../units/length.ts";
import { centredPlace } from "../common/join/centredMotif.ts";
import type { JoinedPart } from "../common/join/joinedPart.ts";
import { gapQuestion, joinedCuts, joinPiece } from "../common/join/joinPiece.ts";
import { joinTurning } from "../common/join/matchedTurning.ts";
import type { Notes } from "../common/notes.ts";
import type { ClothFacts, ItemContext, ItemCut } from "../itemKind.ts";
import { panelMotifDoesNotFit, panelWiderThanCloth } from "./panelFaults.ts";
import type { PanelledWallFields } from "./schema.ts";

/** The cloth of one panel, before it is laid. */
export interface PanelPiece {
  readonly name: string;
  readonly cut: readonly [Length, Length];
  readonly because: string;
  readonly facts: ClothFacts | null;
  /** A motif is to stand in its middle. */
  readonly centred: boolean;
}

/** How it lies on its cloth: in one piece, turned where the cloth may run any way, or joined as is said. */
export function panelPlace(
  fields: PanelledWallFields,
  piece: PanelPiece,
  context: ItemContext,
  notes: Notes,
): { readonly cuts: ItemCut[]; readonly parts: readonly JoinedPart[] | null } {
  const { name, cut, facts, centred } = piece;
  const usable = facts?.usableWidth ?? null;
  const wide = usable !== null && cut[0].isMoreThan(usable);
  const base = {
    piece: name,
    surface: "panel",
    cloth: fields.cloth as string,
    width: cut[0],
    height: cut[1],
    count: fields.panels,
    because: piece.because,
  };
  const series = `${fields["panelled-wall"]}, ${name}`;
  const parts = wide ? partsOf(fields, piece, usable, context, notes) : null;
  if (parts) {
    askOfJoins(fields, piece, parts, notes);
    return { cuts: joinedCuts(parts, base, facts, centred, series), parts };
  }
  const place = centred && !wide ? centredPlace(facts, ...cut) : null;
  if (facts && place && !place.fits && place.widest)
    notes.diagnostics.push(panelMotifDoesNotFit(cut[0], place.widest, facts, context));
  const matched = facts?.repeat != null && facts.repeat.match !== "free";
  const whole: ItemCut = {
    ...base,
    mayTurn: !centred && !matched && (facts?.mayTurn ?? false),
    across: place?.across ?? { how: "free" },
    // Panels of a row show the same part of the pattern at one height.
    along: place?.along ?? (matched ? { how: "level", series, joined: 0 } : { how: "free" }),
  };
  return { cuts: [whole], parts };
}

/** The parts of a piece wider than its cloth; null where it is turned instead, or, with a diagnostic, where it cannot be joined. */
function partsOf(
  fields: PanelledWallFields,
  { cut, facts, centred }: PanelPiece,
  usable: Length,
  context: ItemContext,
  notes: Notes,
): readonly JoinedPart[] | null {
  if (!centred && facts?.mayTurn && !cut[1].isMoreThan(usable)) return null;
  const turning = joinTurning(facts, context);
  const way = fields.join ?? "both-sides";
  const parts = joinPiece(cut[0], usable, turning, way, centred ? facts : null);
  if (parts === null && facts)
    notes.diagnostics.push(panelWiderThanCloth(cut[0], usable, facts, context));
  return parts;
}

function askOfJoins(
  fields: PanelledWallFields,
  { name, facts, centred }: PanelPiece,
  parts: readonly JoinedPart[],
  notes: Notes,
): void {
  if (!fields.join)
    notes.questions.push(
      `The ${name} is wider than its cloth and nothing is said of joins: a whole width in the middle and equal strips at the sides are taken.`,
    );
  const gap = centred ? gapQuestion(facts, name, parts) : null;
  if (gap) notes.questions.push(gap);
}
