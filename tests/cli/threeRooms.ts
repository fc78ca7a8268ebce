import { expect } from "vitest";
import { smallStudio } from "./smallStudio.ts";

/** A studio of two projects and three rooms, for tests of whole builds. */
export function threeRooms(label: string): ReturnType<typeof smallStudio> {
  const studio = smallStudio(label);
  studio.room("quay/den", "first");
  studio.room("quay/hall", "first");
  studio.room("mill/attic", "first");
  return studio;
}

/** A build without PDFs. */
export const QUICK = ["build", "--no-pdf"];

/** All that such a build writes of it. */
export const EVERYTHING = {
  "client/mill/attic/index.html": "first",
  "client/mill/style.css": "p{}",
  "client/quay/den/index.html": "first",
  "client/quay/hall/index.html": "first",
  "client/quay/style.css": "p{}",
  "makers/workroom/mill/attic.html": "first",
  "makers/workroom/quay/den.html": "first",
  "makers/workroom/quay/hall.html": "first",
  "studio/index.html": expect.stringContaining("mill/attic"),
};
