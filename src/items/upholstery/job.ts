import type Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import type { JoinWay } from "../common/join/joinedPart.ts";
import type { PieceName } from "./pieceTable.ts";

/** What of a piece's cut length lies below and above what is seen of it. */
export interface PieceEnds {
  readonly foot: Length;
  readonly head: Length;
}

/** One piece to be covered, as it is written or as it follows from the overall size. */
export interface PieceEntry {
  readonly piece: PieceName;
  /** Width by length at its widest, as seen. */
  readonly size: readonly [Length, Length];
  readonly count?: number;
  readonly centred?: boolean;
  readonly cloth?: string;
  readonly mayTurn?: boolean;
  readonly join?: JoinWay;
  /** What is added to its width and its length instead of the pull or the seams, and the words for it. */
  readonly added?: {
    readonly width: Length;
    readonly length: Length;
    /** Of the length, what lies below and above what is seen, where the two differ: a seam at the head, the pull at the foot. */
    readonly ends?: PieceEnds;
    readonly words: string;
  };
  /** Where it is written: its line, its size, and what it may say. */
  readonly keyPath: readonly (string | number)[];
  /** The key that holds its size, below `keyPath`; `size` of a listed piece. */
  readonly sizeKey: string;
}

/** What every kind of cover writes of its cloth, its welt and its buttons. */
export interface CoverFields {
  readonly cloth: string;
  readonly count?: number | undefined;
  readonly railroad?: boolean | undefined;
  readonly welt?: string | undefined;
  readonly "welt-length"?: Length | undefined;
  readonly "welt-cut"?: "bias" | "straight" | undefined;
  readonly buttons?: number | undefined;
}

/** What has to be covered, whatever kind of thing it is. */
export interface CoverJob {
  readonly title: string;
  /** The thing in a word or two, `chair`: for messages. */
  readonly thing: string;
  readonly cloth: string;
  readonly count: number;
  readonly entries: readonly PieceEntry[];
  /** True: all of the cover runs sideways along the cloth, so that wide pieces have no join. */
  readonly railroad: boolean;
  /** Cloth over finished width where deep buttons take cloth up; none where nothing is said. */
  readonly takeUp?: Fraction;
  /** A loose cover has seams and tuck-ins where a fixed one has its pull. */
  readonly loose: boolean;
  readonly welt: string | null;
  /** Of one; null where nobody measured it. */
  readonly weltLength: Length | null;
  readonly weltCut: "bias" | "straight";
  /** Covered buttons on one. */
  readonly buttons: number;
}

/** The part of a job that every kind writes in the same fields: one of it, run along the cloth, on the bias where nothing is said. */
export function writtenJob(
  fields: CoverFields,
): Pick<CoverJob, "cloth" | "count" | "railroad" | "welt" | "weltLength" | "weltCut" | "buttons"> {
  return {
    cloth: fields.cloth,
    count: fields.count ?? 1,
    railroad: fields.railroad === true,
    welt: fields.welt ?? null,
    weltLength: fields["welt-length"] ?? null,
    weltCut: fields["welt-cut"] ?? "bias",
    buttons: fields.buttons ?? 0,
  };
}
