import type { SeenSurface } from "../itemKind.ts";
import type { PanelledWallMade } from "./pieces.ts";
import type { PanelledWallFields } from "./schema.ts";

/** Cloth seen in the panels, less their mouldings; painted panels show the wall's own colour. */
export function panelledWallSeen(
  fields: PanelledWallFields,
  made: PanelledWallMade,
): SeenSurface[] {
  if (!fields.cloth) return [];
  const inner = (l: { toMm(): number }) => Math.max(0, l.toMm() - 2 * made.moulding.toMm());
  const areaMm2 = made.panels.reduce((sum, q) => sum + inner(q.width) * inner(q.height), 0);
  return [{ surface: "panel", cloth: fields.cloth, colour: null, object: null, areaMm2 }];
}
