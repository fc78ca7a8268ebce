import { bedSkirtKind } from "./bedskirt/kind.ts";
import { blindKind } from "./blind/kind.ts";
import { coverletKind } from "./coverlet/kind.ts";
import { curtainsKind } from "./curtains/kind.ts";
import { cushionKind } from "./cushion/kind.ts";
import { seatPadKind } from "./cushion/seatpad/kind.ts";
import type { ItemKind } from "./itemKind.ts";
import { lampshadeKind } from "./lampshade/kind.ts";
import { objectKind } from "./object/kind.ts";
import { paintKind } from "./paint/kind.ts";
import { panelledWallKind } from "./panelledwall/kind.ts";
import { pelmetKind } from "./pelmet/kind.ts";
import { rollerBlindKind } from "./rollerblind/kind.ts";
import { runnerKind } from "./runner/kind.ts";
import { tableclothKind } from "./tablecloth/kind.ts";
import { tableSkirtKind } from "./tableskirt/kind.ts";
import { throwKind } from "./throw/kind.ts";
import { tiebackKind } from "./tieback/kind.ts";
import { armchairKind } from "./upholstery/armchair/kind.ts";
import { diningChairKind } from "./upholstery/diningchair/kind.ts";
import { dropInKind } from "./upholstery/dropin/kind.ts";
import { headboardKind } from "./upholstery/headboard/kind.ts";
import { ottomanKind } from "./upholstery/ottoman/kind.ts";
import { sofaKind } from "./upholstery/sofa/kind.ts";
import { valanceKind } from "./valance/kind.ts";
import { wallpaperKind } from "./wallpaper/kind.ts";

/** Every kind of item that a room file may name, one line a kind. */
export const ITEM_KINDS: readonly ItemKind[] = [
  curtainsKind as ItemKind,
  blindKind as ItemKind,
  rollerBlindKind as ItemKind,
  tiebackKind as ItemKind,
  lampshadeKind as ItemKind,
  pelmetKind as ItemKind,
  valanceKind as ItemKind,
  cushionKind as ItemKind,
  seatPadKind as ItemKind,
  armchairKind as ItemKind,
  sofaKind as ItemKind,
  diningChairKind as ItemKind,
  dropInKind as ItemKind,
  ottomanKind as ItemKind,
  headboardKind as ItemKind,
  coverletKind as ItemKind,
  bedSkirtKind as ItemKind,
  runnerKind as ItemKind,
  throwKind as ItemKind,
  tableclothKind as ItemKind,
  tableSkirtKind as ItemKind,
  wallpaperKind as ItemKind,
  panelledWallKind as ItemKind,
  paintKind as ItemKind,
  objectKind as ItemKind,
];
