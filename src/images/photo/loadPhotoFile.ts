import { readFile, stat } from "node:fs/promises";
import { basename } from "node:path";
import {
  type Checked,
  type Diagnostic,
  diagnostic,
  type Place,
} from "../../diagnostics/diagnostic.ts";
import { fileKind, isPhotoFormat, type PhotoFormat } from "./photoFormat.ts";

/** Heaviest file that is read, in bytes: a 100-megapixel JPEG at best quality is lighter. */
export const MOST_BYTES = 120 * 1024 * 1024;

/** A photograph's bytes, its kind known and readable. */
export interface PhotoFile {
  readonly bytes: Buffer;
  readonly format: PhotoFormat;
  readonly name: string;
}

const EXPECTED = "a JPEG, PNG, WebP, TIFF or AVIF photograph";

/** Reads a photograph's file and refuses, in plain words, what is missing, empty, too heavy or of another kind. */
export async function loadPhotoFile(path: string, place: Place): Promise<Checked<PhotoFile>> {
  const name = basename(path);
  const refuse = (code: string, message: string, hint: string): Checked<PhotoFile> => ({
    value: null,
    diagnostics: [say(place, code, message, name, hint)],
  });
  let bytes: Buffer;
  try {
    const state = await stat(path);
    if (!state.isFile()) {
      return refuse(
        "photo-not-a-file",
        `${name} is a folder, not a photograph.`,
        "Name the photograph inside it, with its ending (.jpg).",
      );
    }
    if (state.size === 0) {
      return refuse(
        "photo-empty",
        `The photograph ${name} is empty (0 bytes).`,
        "Copy it again from the camera or telephone.",
      );
    }
    if (state.size > MOST_BYTES) {
      return refuse(
        "photo-too-heavy",
        `The photograph ${name} is ${megabytes(state.size)} MB; at most ${megabytes(MOST_BYTES)} MB are read.`,
        "Export it as a JPEG.",
      );
    }
    bytes = await readFile(path);
  } catch (error) {
    const missing = ["ENOENT", "ENOTDIR"].includes((error as NodeJS.ErrnoException).code ?? "");
    return missing
      ? refuse(
          "photo-missing",
          `There is no photograph ${name}.`,
          "Look where it lies, and mend the name: capitals and the ending count.",
        )
      : refuse(
          "photo-unreadable",
          `The photograph ${name} cannot be opened.`,
          "See that you may read the file, and that no other program holds it.",
        );
  }
  const kind = fileKind(bytes);
  if (isPhotoFormat(kind)) return { value: { bytes, format: kind, name }, diagnostics: [] };
  return refuse(...refusal(kind, name));
}

function refusal(kind: string, name: string): [code: string, message: string, hint: string] {
  if (kind === "heic") {
    return [
      "photo-heic",
      `${name} is a HEIC photograph, which cannot be read here.`,
      'Export it as JPEG: on the telephone share it as "Most Compatible", or set the camera\'s format to Most Compatible; on a computer open it and export as JPEG.',
    ];
  }
  if (kind === "svg" || kind === "pdf") {
    return [
      `photo-${kind}`,
      `${name} is a drawing (${kind.toUpperCase()}), not a photograph.`,
      "Photograph or scan the cloth itself, and save it as JPEG or PNG.",
    ];
  }
  if (kind === "gif" || kind === "bmp") {
    return [
      `photo-${kind}`,
      `${name} is a ${kind.toUpperCase()} picture, a kind that is not read.`,
      "Save it as JPEG or PNG, from the original photograph where there is one.",
    ];
  }
  return [
    "photo-not-a-picture",
    `${name} is not a picture that can be read, whatever its ending says.`,
    "Open it in a picture viewer and save it as JPEG; if it will not open, copy it again from the camera.",
  ];
}

function say(place: Place, code: string, message: string, name: string, hint: string): Diagnostic {
  return diagnostic(place, code, message, { actual: name, expected: EXPECTED, hint });
}

function megabytes(bytes: number): string {
  return (bytes / 1024 / 1024).toFixed(0);
}
