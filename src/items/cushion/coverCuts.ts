import { capital } from "../../units/capital.ts";
import type { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { centredPlace } from "../common/join/centredMotif.ts";
import type { JoinedPart } from "../common/join/joinedPart.ts";
import { gapQuestion, joinedCuts } from "../common/join/joinPiece.ts";
import { joinTurning } from "../common/join/matchedTurning.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext, ItemCut, WorkingLine } from "../itemKind.ts";
import type { Bolster } from "./bolster.ts";
import type { CushionCover } from "./cover.ts";
import type { CushionMotifs } from "./motifs.ts";
import type { CushionFields } from "./schema.ts";
import type { CushionSizes } from "./sizes.ts";

/** The pieces of a cover but for its boxing and welt: face and back, or a bolster's body and its ends; joined where they are too wide. */
export function coverCuts(
  fields: CushionFields,
  cover: CushionCover,
  motifs: CushionMotifs,
  context: ItemContext,
  notes: Notes,
): ItemCut[] {
  const { bolster } = cover.sizes;
  const face = facePiece(fields, cover, motifs.faceCentred, context);
  const under = bolster
    ? endPiece(fields, cover.sizes, bolster, motifs.backCentred, context)
    : backPiece(fields, cover, motifs.backCentred, context);
  const cuts = [
    ...whereJoined(face, fields, cover, motifs.faceCentred, context, notes),
    ...whereJoined(under, fields, cover, motifs.backCentred, context, notes),
  ];
  if (bolster) notes.working.push(endWorking(cover.sizes, bolster, context));
  return cuts;
}

function facePiece(
  fields: CushionFields,
  { sizes }: CushionCover,
  centred: boolean,
  context: ItemContext,
): ItemCut {
  return {
    piece: sizes.bolster ? "body" : sizes.form === "box" ? "top" : "face",
    surface: "face",
    cloth: fields.cloth,
    ...asLaid(sizes.cut, sizes),
    count: sizes.count,
    mayTurn: mayTurn(fields.cloth, centred, sizes, context),
    ...placeOf(fields.cloth, sizes.cut, centred, context),
    because: sizes.because + sidewaysWords(sizes),
  };
}

function backPiece(
  fields: CushionFields,
  { sizes, back }: CushionCover,
  centred: boolean,
  context: ItemContext,
): ItemCut {
  const cloth = fields.back ?? fields.cloth;
  return {
    piece: sizes.form === "box" ? "bottom" : "back",
    surface: "back",
    cloth,
    ...asLaid(back.cut, sizes),
    count: back.split ? sizes.count * 2 : sizes.count,
    mayTurn: mayTurn(cloth, centred, sizes, context),
    ...placeOf(cloth, back.cut, centred, context),
    because: back.because ?? sizes.because + sidewaysWords(sizes),
  };
}

/** Both ends of a bolster, as the squares that hold them. */
function endPiece(
  fields: CushionFields,
  sizes: CushionSizes,
  bolster: Bolster,
  centred: boolean,
  context: ItemContext,
): ItemCut {
  const cloth = fields.back ?? fields.cloth;
  return {
    piece: "end",
    surface: "back",
    cloth,
    width: bolster.end,
    height: bolster.end,
    count: sizes.count * 2,
    mayTurn: mayTurn(cloth, centred, sizes, context),
    across: { how: "free" },
    along: { how: "free" },
    because: `${endSum(sizes, context)}, ${bolster.section === "round" ? "a circle" : "a square"}`,
  };
}

function endSum(sizes: CushionSizes, context: ItemContext): string {
  const p = (l: Length) => printLength(l, context.units);
  return `${p(sizes.stated[1])} + 2 × ${p(sizes.seam)} seams`;
}

function endWorking(sizes: CushionSizes, bolster: Bolster, context: ItemContext): WorkingLine {
  return {
    what: "Each of two ends",
    sum: endSum(sizes, context),
    result: printSize([bolster.end, bolster.end], context.units),
    rounded: null,
  };
}

/** Railroaded pieces are laid as they must be cut, their width along the cloth. */
function asLaid(size: readonly [Length, Length], { railroad }: CushionSizes) {
  return railroad ? { width: size[1], height: size[0] } : { width: size[0], height: size[1] };
}

function sidewaysWords({ railroad }: CushionSizes): string {
  return railroad ? "; cloth sideways" : "";
}

function mayTurn(
  cloth: string,
  centred: boolean,
  { railroad }: CushionSizes,
  context: ItemContext,
): boolean {
  return !centred && !railroad && (context.cloth(cloth)?.mayTurn ?? false);
}

function placeOf(
  cloth: string,
  cut: readonly [Length, Length],
  centred: boolean,
  context: ItemContext,
): Pick<ItemCut, "across" | "along"> {
  if (!centred) return { across: { how: "free" }, along: { how: "free" } };
  const { across, along } = centredPlace(context.cloth(cloth), ...cut);
  return { across, along };
}

/** A piece as it is cut: itself, or the parts that it is joined of, with the line that says how and what must be asked. */
function whereJoined(
  piece: ItemCut,
  fields: CushionFields,
  cover: CushionCover,
  centred: boolean,
  context: ItemContext,
  notes: Notes,
): ItemCut[] {
  const parts = cover.joins(piece.cloth, piece.width, centred);
  if (!parts) return [piece];
  const facts = context.cloth(piece.cloth);
  const gap = centred ? gapQuestion(facts, piece.piece, parts) : null;
  if (gap) notes.questions.push(gap);
  notes.working.push(joinedWorking(piece, parts, context));
  return joinedCuts(parts, piece, facts, centred, `${fields.cushion}, ${piece.piece}`);
}

function joinedWorking(
  piece: ItemCut,
  parts: readonly JoinedPart[],
  context: ItemContext,
): WorkingLine {
  const p = (l: Length) => printLength(l, context.units);
  const whole = parts.find((part) => part.selvedge === null);
  const strips = parts.filter((part) => part.selvedge !== null);
  const turning = joinTurning(context.cloth(piece.cloth), context);
  return {
    what: `${capital(piece.piece)}, joined`,
    sum: `${p(piece.width)} on ${p(whole?.width ?? piece.width)} of cloth, ${parts.length - 1} ${parts.length === 2 ? "join" : "joins"} of 2 × ${p(turning)}`,
    result: `${strips.length} ${strips.length === 1 ? "strip" : "strips"} of ${p(strips[0]?.width ?? piece.width)}`,
    rounded: null,
  };
}
