import { z } from "zod";
import { positiveLengthField, sizeField } from "../../fields/lengthField.ts";
import { countField, refField, wordField, yesNoField } from "../../fields/plainFields.ts";
import { JOINS } from "../common/join/joinedPart.ts";
import type { PieceEntry } from "./job.ts";
import type { PieceName } from "./pieceTable.ts";

/** The list of measured pieces, of the names that a kind has. */
export function piecesField<const N extends PieceName>(names: readonly N[]) {
  return z.array(
    z.strictObject({
      piece: wordField(names).meta({ description: "which piece it is" }),
      size: sizeField(2).meta({
        description: "width x length at its widest, as seen; pull, seams or tuck-ins are added",
      }),
      count: countField()
        .optional()
        .meta({ description: "how many of it on one; two of what has two sides" }),
      centred: yesNoField()
        .optional()
        .meta({ description: "yes: the motif's middle stands in the middle of the piece" }),
      cloth: refField("a cloth").optional().meta({ description: "another cloth for this piece" }),
      "may-turn": yesNoField()
        .optional()
        .meta({ description: "yes: this piece may lie sideways on the cloth" }),
      join: wordField(JOINS).optional().meta({
        description:
          "of a piece wider than the cloth: a whole width in the middle and strips at both sides, or one strip at one side",
      }),
    }),
  );
}

/** What every upholstered thing may say of its welt, and which way its cloth runs. */
export const coverFields = {
  welt: refField("a cloth")
    .optional()
    .meta({ description: "the welt's cloth; no welt where nothing is said" }),
  "welt-length": positiveLengthField()
    .optional()
    .meta({ description: "welt on one, measured along its seams" }),
  "welt-cut": wordField(["bias", "straight"])
    .optional()
    .meta({ description: "how its strips are cut; on the bias where nothing is said" }),
  railroad: yesNoField().optional().meta({
    description:
      "yes: all of the cover runs sideways along the cloth, so that wide pieces have no join",
  }),
} as const;

interface ListedPiece {
  readonly piece: PieceName;
  readonly size: readonly unknown[];
  readonly count?: number | undefined;
  readonly centred?: boolean | undefined;
  readonly cloth?: string | undefined;
  readonly "may-turn"?: boolean | undefined;
  readonly join?: PieceEntry["join"];
}

/** The written list as entries that know their lines. */
export function listedEntries(pieces: readonly ListedPiece[] | undefined): PieceEntry[] {
  return (pieces ?? []).map((p, at) => ({
    piece: p.piece,
    size: p.size as PieceEntry["size"],
    ...(p.count === undefined ? {} : { count: p.count }),
    ...(p.centred === undefined ? {} : { centred: p.centred }),
    ...(p.cloth === undefined ? {} : { cloth: p.cloth }),
    ...(p["may-turn"] === undefined ? {} : { mayTurn: p["may-turn"] }),
    ...(p.join === undefined ? {} : { join: p.join }),
    keyPath: ["pieces", at],
    sizeKey: "size",
  }));
}
