import type { Checked, Place } from "../../diagnostics/diagnostic.ts";
import { sha256 } from "../cache.ts";
import { type DecodedPhoto, decodePhoto } from "./decodePhoto.ts";
import { loadPhotoFile, type PhotoFile } from "./loadPhotoFile.ts";

/** A photograph that several pictures are made of: its file is read once, and decoded once, by the first that needs its pixels. */
export interface OpenPhoto {
  readonly file: PhotoFile;
  readonly sha256: string;
  readonly decoded: () => Promise<Checked<DecodedPhoto>>;
}

/** Opens a photograph, or says in plain words why it cannot be read; `place` is where it was named. */
export async function openPhoto(path: string, place: Place): Promise<Checked<OpenPhoto>> {
  const file = await loadPhotoFile(path, place);
  const { value } = file;
  if (value === null) return { value, diagnostics: file.diagnostics };
  let decoded: Promise<Checked<DecodedPhoto>> | null = null;
  return {
    value: {
      file: value,
      sha256: sha256(value.bytes),
      decoded: () => {
        decoded ??= decodePhoto(value, place);
        return decoded;
      },
    },
    diagnostics: file.diagnostics,
  };
}
