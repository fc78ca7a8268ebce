import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { buildStudio } from "./demo.ts";

const home = mkdtempSync(join(tmpdir(), "roomcloth-unpriced-"));
afterAll(() => rmSync(home, { recursive: true, force: true }));
const demo = join(import.meta.dirname, "../../content");

/** A room of a cushion and a wall, of which some have a price. */
async function proposal(name: string, cushion: string): Promise<string> {
  const content = join(home, name);
  mkdirSync(join(content, "cloths"), { recursive: true });
  mkdirSync(join(content, "projects/mill"), { recursive: true });
  writeFileSync(
    join(content, "studio.md"),
    "---\nstudio: Larch Rooms\ncurrency: USD\nlanguage: en-US\nunits: inches\npaper: tabloid\n---\n",
  );
  cpSync(join(demo, "cloths/sorrel.jpg"), join(content, "cloths/sorrel.jpg"));
  writeFileSync(
    join(content, "cloths/sorrel.md"),
    `---\ncloth: Sorrel\nphoto: { file: sorrel.jpg, shows: 12" }\nwidth: 54"\n---\n`,
  );
  writeFileSync(
    join(content, "projects/mill/project.md"),
    "---\nproject: Mill\nclient: { name: Ada }\nstatus: proposed\n---\n",
  );
  writeFileSync(
    join(content, "projects/mill/attic.md"),
    `---\nroom: Attic\nheight: 8'\nfloor: 10' x 12'\nbudget: 900\ncloths: [sorrel]\nitems:\n  - { cushion: Bed, cloth: sorrel, size: 18" x 18"${cushion} }\n---\nA room.\n`,
  );
  const built = await buildStudio(content, ["--no-pdf"]);
  const html = readFileSync(join(built.out, "client/mill/proposal.html"), "utf8");
  await built.remove();
  return html.replace(/<[^>]+>/g, " ").replace(/\s+/g, " ");
}

test("while no price is in, the client reads no sum and nothing that is left of the limit", async () => {
  const words = await proposal("none", "");
  expect(words).toContain("Price to come for the attic, making included. No price is in yet.");
  expect(words).not.toMatch(/\$0|That leaves/);
  expect(words).toMatch(/Pillow, bed Sorrel making to come \*/);
});

test("with some prices in, the sum is said not to be the whole of it", async () => {
  const words = await proposal("some", ", making: 40");
  expect(words).toContain("Not every price is in yet, so this is not the whole of it.");
  expect(words).toMatch(/Pillow, bed Sorrel making 40 \*/);
  expect(words).toMatch(/Total 40 \*/);
  expect(words).not.toContain("That leaves");
});
