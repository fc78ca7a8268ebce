import { shownInMiddle } from "../common/join/joinPiece.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext } from "../itemKind.ts";
import { splitBackFault } from "./back.ts";
import type { CushionCover } from "./cover.ts";
import type { CushionFields } from "./schema.ts";
import { sideCentring } from "./sideCentring.ts";

/** Which sides of a cushion are to have a motif in their middle. */
export interface CushionMotifs {
  readonly faceCentred: boolean;
  readonly backCentred: boolean;
}

/** What a side has in its middle: a motif; where it is joined of whole widths perhaps the gap between two; or what falls there. */
export type SideShows = "motif" | "gap" | "as-it-falls";

/** What face and back show once their joins are known. */
export function sidesShow(
  fields: CushionFields,
  { sizes, joins }: CushionCover,
  motifs: CushionMotifs,
  context: ItemContext,
): { readonly face: SideShows; readonly back: SideShows } {
  const shows = (cloth: string, centred: boolean): SideShows =>
    centred ? shownInMiddle(context.cloth(cloth), joins(cloth, sizes.cut[0], true)) : "as-it-falls";
  return {
    face: shows(fields.cloth, motifs.faceCentred),
    back: shows(fields.back ?? fields.cloth, motifs.backCentred),
  };
}

/**
 * Face and back looked at one by one: a face is centred where its cloth has a motif and nothing is said, a back only where it is
 * asked for. A cloth that cannot is told at its line.
 */
export function motifsOf(
  fields: CushionFields,
  cover: CushionCover,
  context: ItemContext,
  notes: Notes,
): CushionMotifs {
  const { sizes, back, joins } = cover;
  const { bolster, cut } = sizes;
  const backCloth = fields.back ?? fields.cloth;
  const side = {
    context,
    finishedWidth: sizes.stated[0],
    cut,
    seam: sizes.seam.plus(sizes.flange),
    railroad: sizes.railroad,
    joinable: fields.join === undefined && !bolster,
  };
  const onFace = sideCentring({
    ...side,
    cloth: fields.cloth,
    joined: joins(fields.cloth, cut[0], false) !== null,
    asked: fields.motif,
    key: "motif",
    usually: true,
  });
  const onBack = sideCentring({
    ...side,
    cloth: backCloth,
    joined: joins(backCloth, cut[0], false) !== null,
    asked: fields["back-motif"],
    key: "back-motif",
    usually: false,
  });
  notes.diagnostics.push(...onFace.diagnostics, ...(bolster ? [] : onBack.diagnostics));
  if (back.split && onBack.centred) splitBackFault(sizes, context, notes);
  return { faceCentred: onFace.centred, backCentred: onBack.centred && !back.split };
}
