import type { ClothMeasure } from "../cloth/clothMeasure.ts";

/** The measurement of a photograph as plain values for `--json`: lengths in millimetres, colours as hex beside OKLCH. */
export function measureJson(photo: string, measure: ClothMeasure, notes: readonly string[]) {
  const { pattern, quality } = measure;
  return {
    photo,
    showsMm: measure.showsMm,
    showsDownMm: measure.showsDownMm,
    colours: measure.colours.map(({ hex, oklch, share, name, family, lrv }) => ({
      hex,
      oklch: [...oklch],
      share,
      name,
      family,
      lrv,
    })),
    average: measure.average,
    pattern: {
      kind: pattern.kind,
      repeat: pattern.repeat && {
        ...pattern.repeat,
        lattice: pattern.repeat.lattice.map((vector) => [...vector]),
      },
      motifMm: pattern.motifMm,
      directionDeg: pattern.directionDeg,
      bands: pattern.bands.map(({ directionDeg, bands }) => ({
        directionDeg,
        bands: bands.map(({ hex, widthMm }) => ({ hex, widthMm })),
      })),
      runs: pattern.runs,
      contrast: pattern.contrast,
      busyness: pattern.busyness,
      patternToM: pattern.patternToM,
      readsPlainFromM: pattern.readsPlainFromM,
    },
    quality: { ...quality },
    notes: [...notes],
    confirm: measure.confirm.map(({ what, why }) => ({ what, why })),
  };
}
