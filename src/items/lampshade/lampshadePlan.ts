import type { Length } from "../../units/length.ts";
import type { ClothFacts } from "../itemKind.ts";
import type { CutPanel } from "./development.ts";
import type { Frame } from "./frame.ts";
import type { Pleated } from "./pleated.ts";

/** Every size that the drawing and the sheet of a lampshade need. */
export interface LampshadePlan extends Frame {
  readonly cloth: ClothFacts;
  readonly usableWidth: Length;
  readonly lap: Length;
  readonly turn: Length;
  /** One panel of that net as it is cut, millimetres; null for a drum. */
  readonly panel: CutPanel | null;
  readonly panels: number;
  /** Rectangle that one panel is cut from, up to what can be marked. */
  readonly cutWidth: Length;
  readonly cutHeight: Length;
  readonly railroaded: boolean;
  readonly motifCentred: boolean;
  /** The middle of the front, opposite the seam, half-way up the side: from the piece's left edge and above its foot. */
  readonly frontX: Length;
  readonly frontAboveFoot: Length;
  readonly handbook: Length;
  readonly count: number;
  /** The strip of a soft shade; null where the cloth lies smooth on a backing. */
  readonly pleated: Pleated | null;
}
