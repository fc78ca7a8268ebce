import { bedSkirtDrawing } from "./bedskirt/drawing.ts";
import { blindDrawing } from "./blind/drawing.ts";
import { coverletDrawing } from "./coverlet/drawing.ts";
import { curtainsDrawing } from "./curtains/drawing.ts";
import { cushionDrawing } from "./cushion/drawing.ts";
import { seatPadDrawing } from "./cushion/seatpad/drawing.ts";
import type { ItemDrawing } from "./itemDrawing.ts";
import { lampshadeDrawing } from "./lampshade/drawing.ts";
import { objectDrawing } from "./object/drawing.ts";
import { paintDrawing } from "./paint/drawing.ts";
import { panelledWallDrawing } from "./panelledwall/drawing.ts";
import { pelmetDrawing } from "./pelmet/drawing.ts";
import { rollerBlindDrawing } from "./rollerblind/drawing.ts";
import { runnerDrawing } from "./runner/drawing.ts";
import { tableclothDrawing } from "./tablecloth/drawing.ts";
import { tableSkirtDrawing } from "./tableskirt/drawing.ts";
import { throwDrawing } from "./throw/drawing.ts";
import { tiebackDrawing } from "./tieback/drawing.ts";
import { armchairDrawing } from "./upholstery/armchair/drawing.ts";
import { diningChairDrawing } from "./upholstery/diningchair/drawing.ts";
import { dropInDrawing } from "./upholstery/dropin/drawing.ts";
import { headboardDrawing } from "./upholstery/headboard/drawing.ts";
import { ottomanDrawing } from "./upholstery/ottoman/drawing.ts";
import { sofaDrawing } from "./upholstery/sofa/drawing.ts";
import { valanceDrawing } from "./valance/drawing.ts";
import { wallpaperDrawing } from "./wallpaper/drawing.ts";

/** How each kind of item is drawn and described, one line a kind; only documents/ reads it. */
export const ITEM_DRAWINGS: readonly ItemDrawing[] = [
  curtainsDrawing as ItemDrawing,
  blindDrawing as ItemDrawing,
  rollerBlindDrawing as ItemDrawing,
  tiebackDrawing as ItemDrawing,
  lampshadeDrawing as ItemDrawing,
  pelmetDrawing as ItemDrawing,
  valanceDrawing as ItemDrawing,
  cushionDrawing as ItemDrawing,
  seatPadDrawing as ItemDrawing,
  armchairDrawing as ItemDrawing,
  sofaDrawing as ItemDrawing,
  diningChairDrawing as ItemDrawing,
  dropInDrawing as ItemDrawing,
  ottomanDrawing as ItemDrawing,
  headboardDrawing as ItemDrawing,
  coverletDrawing as ItemDrawing,
  bedSkirtDrawing as ItemDrawing,
  runnerDrawing as ItemDrawing,
  throwDrawing as ItemDrawing,
  tableclothDrawing as ItemDrawing,
  tableSkirtDrawing as ItemDrawing,
  wallpaperDrawing as ItemDrawing,
  panelledWallDrawing as ItemDrawing,
  paintDrawing as ItemDrawing,
  objectDrawing as ItemDrawing,
];
