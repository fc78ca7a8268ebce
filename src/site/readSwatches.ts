import { join, posix } from "node:path";
import type { ClothMeasure } from "../cloth/clothMeasure.ts";
import { measureCloth } from "../cloth/measureCloth.ts";
import { type MeasureSettings, USUAL_SETTINGS } from "../cloth/measureSettings.ts";
import { motifCentre } from "../cloth/motif/motifCentre.ts";
import { shrunkRectangle } from "../cloth/pixels/pixels.ts";
import type { Diagnostic, Place } from "../diagnostics/diagnostic.ts";
import { type Cache, cacheKey, NO_CACHE, sha256 } from "../images/cache.ts";
import { limiter } from "../images/limiter.ts";
import { loadPhotoFile } from "../images/photo/loadPhotoFile.ts";
import { readPhoto } from "../images/photo/readPhoto.ts";
import type { ClothRecord, ObjectRecord, Records } from "../records/records.ts";
import type { PhotoFields } from "../records/schema/shared.ts";
import type { Swatch, SwatchPhoto } from "../swatches/swatch.ts";
import { usedCloth, usedObject } from "../swatches/usedCloth.ts";

/** A photograph that was read, and what was measured on it. */
interface ReadSwatch {
  readonly photo: SwatchPhoto;
  readonly measure: ClothMeasure | null;
}

/** All cards with their photographs read and measured. A card whose photograph could not be read has none, and a diagnostic. */
export interface Swatches {
  readonly cloths: ReadonlyMap<string, Swatch>;
  readonly objects: ReadonlyMap<string, Swatch>;
  readonly diagnostics: readonly Diagnostic[];
  /** Paths of the cards whose photograph is at fault. */
  readonly faulty: ReadonlySet<string>;
}

interface Measured {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly measure: ClothMeasure | null;
  readonly motifAt: { readonly x: number; readonly y: number } | null;
}

async function measured(
  path: string,
  photo: PhotoFields,
  declaredMotifMm: number | null,
  settings: MeasureSettings,
  place: Place,
  found: Diagnostic[],
): Promise<Measured | null> {
  const read = await readPhoto(path, { place });
  found.push(...read.diagnostics);
  if (read.value === null) return null;
  const { pixels, widthPx, heightPx } = read.value;
  const shows = photo.shows?.toMm() ?? null;
  if (shows === null) {
    // Colours need no scale; sizes would be a made-up number, so they are left out.
    const colours = measureCloth(pixels, 1000, { place, ...settings });
    const value = colours.value;
    const measure = value
      ? {
          ...value,
          pattern: {
            ...value.pattern,
            repeat: null,
            motifMm: null,
            bands: [],
            patternToM: null,
            readsPlainFromM: null,
          },
        }
      : null;
    return { widthPx, heightPx, measure, motifAt: null };
  }
  const scale = pixels.width / widthPx;
  const neutral = photo.neutral
    ? {
        rectangle: shrunkRectangle(photo.neutral, scale),
        reflectance: photo.neutral.reflectance,
      }
    : undefined;
  const { value, diagnostics } = measureCloth(pixels, shows, {
    place,
    ...settings,
    ...(neutral ? { neutral } : {}),
  });
  found.push(...diagnostics);
  const motif = declaredMotifMm ?? value?.pattern.motifMm ?? null;
  return {
    widthPx,
    heightPx,
    measure: value,
    motifAt: motif ? motifCentre(pixels, motif, shows / pixels.width) : null,
  };
}

async function readOne(
  contentDir: string,
  card: ClothRecord | ObjectRecord,
  settings: MeasureSettings,
  cache: Cache,
  found: Diagnostic[],
): Promise<ReadSwatch | null> {
  const photo = card.fields.photo;
  if (!photo) return null;
  const place = card.place(["photo", "file"]);
  const source = posix.join(posix.dirname(card.path), photo.file);
  const path = join(contentDir, source);
  const file = await loadPhotoFile(path, place);
  if (file.value === null) {
    found.push(...file.diagnostics);
    return null;
  }
  const motif = "motif" in card.fields ? (card.fields.motif?.toMm() ?? null) : null;
  const hash = sha256(file.value.bytes);
  const key = cacheKey({
    what: "measurement",
    sha256: hash,
    options: {
      shows: photo.shows?.toMm() ?? null,
      neutral: photo.neutral ?? null,
      motif,
      settings,
    },
  });
  let value = await cache.readJson<Measured>(key);
  if (value === null) {
    value = await measured(path, photo, motif, settings, place, found);
    if (value) await cache.writeJson(key, value);
  }
  if (value === null) return null;
  return {
    photo: {
      source,
      widthPx: value.widthPx,
      heightPx: value.heightPx,
      showsMm: photo.shows?.toMm() ?? null,
      sha256: hash,
      motifAt: photo["motif-at"] ?? value.motifAt,
    },
    measure: value.measure,
  };
}

/** How cloths are judged: as the studio's card says, else as usual. */
export function measureSettingsOf({ studio }: Pick<Records, "studio">): MeasureSettings {
  const { printLimits, acuity } = USUAL_SETTINGS;
  const large = studio?.fields["large-print"];
  return {
    printLimits: {
      cellMm: large?.repeat?.toMm() ?? printLimits.cellMm,
      motifMm: large?.motif?.toMm() ?? printLimits.motifMm,
    },
    acuity: studio?.fields.acuity ?? acuity,
  };
}

/** Reads and measures the photographs of all cards, two at a time, from the cache where they are known. */
export async function readSwatches(
  contentDir: string,
  records: Records,
  cache: Cache = NO_CACHE,
  onProgress: (line: string) => void = () => {},
): Promise<Swatches> {
  const run = limiter(2);
  const settings = measureSettingsOf(records);
  const found: Diagnostic[] = [];
  const faulty = new Set<string>();
  let done = 0;
  const all = records.cloths.size + records.objects.size;
  const read = async <C extends ClothRecord | ObjectRecord>(
    card: C,
    make: (card: C, measure: ClothMeasure | null, photo: SwatchPhoto | null) => Swatch,
  ): Promise<[string, Swatch]> =>
    run(async () => {
      const own: Diagnostic[] = [];
      const one = await readOne(contentDir, card, settings, cache, own);
      const swatch = make(card, one?.measure ?? null, one?.photo ?? null);
      onProgress(`Measured ${++done} of ${all} cards`);
      found.push(...own);
      if (own.some((d) => d.severity === "error")) faulty.add(card.path);
      return [card.id, swatch];
    });
  const [cloths, objects] = await Promise.all([
    Promise.all([...records.cloths.values()].map((c) => read(c, usedCloth))),
    Promise.all([...records.objects.values()].map((o) => read(o, usedObject))),
  ]);
  return {
    cloths: new Map(cloths),
    objects: new Map(objects),
    diagnostics: found,
    faulty,
  };
}
