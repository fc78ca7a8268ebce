import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { stagedPages } from "./staged.ts";

const home = mkdtempSync(join(tmpdir(), "roomcloth-unpriced-"));
afterAll(() => rmSync(home, { recursive: true, force: true }));
const demo = join(import.meta.dirname, "../../content");

/** A room of a cushion and a wall, of which some have a price. */
async function proposal(name: string, cushion: string): Promise<string> {
  return (await pages(name, cushion)).proposal;
}

/** The words of the proposal and of the account. */
async function pages(name: string, cushion: string, fees = "") {
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
    `---\nproject: Mill\nclient: { name: Ada }\nstatus: proposed\n${fees}---\n`,
  );
  writeFileSync(
    join(content, "projects/mill/attic.md"),
    `---\nroom: Attic\nheight: 8'\nfloor: 10' x 12'\nbudget: 900\ncloths: [sorrel]\nitems:\n  - { cushion: Bed, cloth: sorrel, size: 18" x 18"${cushion} }\n---\nA room.\n`,
  );
  const built = await stagedPages(content, /(proposal|account)\.html$/);
  const words = (path: string): string =>
    readFileSync(join(built.out, path), "utf8")
      .replace(/<[^>]+>/g, " ")
      .replace(/\s+/g, " ");
  const made = {
    proposal: words("client/mill/proposal.html"),
    account: words("studio/mill/account.html"),
  };
  await built.remove();
  return made;
}

test("while no price is in, the client reads no sum and nothing that is left of the limit", async () => {
  const words = await proposal("none", "");
  expect(words).toContain("Price to come for the attic, making included. No price is in yet.");
  expect(words).not.toMatch(/\$0|That leaves/);
  expect(words).toMatch(/Pillow, bed Sorrel making to come \*/);
});

test("what there are several of is counted in words", async () => {
  expect(await proposal("several", ", count: 3")).toMatch(
    /Three pillows, bed Sorrel making to come \*/,
  );
});

test("with some prices in, the sum is said not to be the whole of it", async () => {
  const words = await proposal("some", ", making: 40");
  expect(words).toContain("Not every price is in yet, so this is not the whole of it.");
  expect(words).toMatch(/Pillow, bed Sorrel making 40 \*/);
  expect(words).toMatch(/Total 40 \*/);
  expect(words).not.toContain("That leaves");
});

test("a share of prices that are partly in stands as far as it is known, so that every column adds up to its total", async () => {
  const fees = "fees: { survey: 30, design: { share: 10 % } }\n";
  const { proposal: client, account } = await pages("share", ", making: 40", fees);
  // 40 made, 4 of it for the design, 30: 74.
  expect(client).toMatch(/Design fee 4 \* Survey and measuring 30 Total 74 \*/);
  expect(client).toContain("Fees and fitting $34 *");
  for (const words of [client, account])
    expect(words).toContain(
      "* Price to come: Sorrel. The total leaves it out. Design fee is a share of the prices that are in, and will grow with the others.",
    );
  expect(account).toContain("Price to come: Sorrel. ");
  expect(account).toMatch(/The whole project 34\.00 34\.00 \* Design fee 4\.00 4\.00 \*/);
});
