import { lightness } from "../../colour/luminance.ts";
import type { RoleOf } from "../../scheme/roles.ts";
import { isPlain, type Swatch } from "../../swatches/swatch.ts";
import { mostOnPaper } from "./cuttingFill.ts";
import type { Field, HangPiece } from "./hangPiece.ts";

/** One scale for the whole board by the largest motif: 1:3, 1:2 under 60 mm, 1:4 over 250 mm. */
function boardScale(largestMotifMm: number | null): number {
  if (largestMotifMm === null) return 3;
  return largestMotifMm < 60 ? 2 : largestMotifMm > 250 ? 4 : 3;
}

/** A main cloth whose photograph cannot cover this part of the field stands at a larger scale. */
const ENOUGH = 0.17;

/** The board's scale, larger by at most half where the main cloth's photograph shows too little to lead at the usual one. */
export function scaleFor(
  roles: readonly RoleOf[],
  swatches: ReadonlyMap<string, Swatch>,
  field: Field,
): number {
  const motifs = roles.flatMap((r) => (r.motifMm ? [r.motifMm] : []));
  const usual = boardScale(motifs.length > 0 ? Math.max(...motifs) : null);
  const main = swatches.get(roles.find((r) => r.role === "main")?.cloth ?? "");
  if (!main) return usual;
  const leads = (scale: number): boolean => {
    const most = mostOnPaper(main, scale);
    return !most || most.width * most.height >= ENOUGH * field.width * field.height;
  };
  let scale = usual;
  while (!leads(scale) && scale - 1 >= usual / 2) scale--;
  return scale;
}

function lookOf(swatch: Swatch): HangPiece["look"] {
  if (isPlain(swatch)) return "plain";
  if (swatch.kind === "stripe") return "stripe";
  return swatch.kind === "check" || swatch.kind === "geometric" ? "geometric" : "print";
}

function pieceOf(role: RoleOf, swatch: Swatch, scale: number): HangPiece {
  return {
    id: role.cloth,
    role: role.role,
    share: role.shareOfCloth,
    ownAspect: null,
    look: lookOf(swatch),
    repeatOnPaperMm: swatch.repeat ? (swatch.repeat.acrossMm ?? swatch.repeat.upMm) / scale : null,
    most: mostOnPaper(swatch, scale),
    lightness: swatch.average ? lightness(swatch.average) : 70,
  };
}

/** The anchor's share of the mix, which no cloth's part of the room decides. */
const ANCHOR_SHARE = 0.19;

/** What is to be hung: the anchor, where it is photographed, and each cloth by its role and share. */
export function mixPieces(
  roles: readonly RoleOf[],
  swatches: ReadonlyMap<string, Swatch>,
  anchor: Swatch | null,
  scale: number,
): HangPiece[] {
  const cloths = roles.map((r) => pieceOf(r, swatches.get(r.cloth) as Swatch, scale));
  if (!anchor?.photo) return cloths;
  const first: HangPiece = {
    id: anchor.id,
    role: "anchor",
    share: ANCHOR_SHARE,
    ownAspect: anchor.photo.widthPx / anchor.photo.heightPx,
    look: "print",
    repeatOnPaperMm: null,
    most: null,
    lightness: anchor.average ? lightness(anchor.average) : 60,
  };
  return [first, ...cloths];
}
