import { expect, test } from "vitest";
import { computedFolder } from "./smallFolder.ts";

// A studio has many projects, and asks for one: the others are not worked out, and it comes out as it does with them.

const room = (size: string) => `room: Den
items:
  - cushion: Seat
    cloth: linen
    size: ${size}`;
const FILES = {
  "studio.md":
    "studio: Alder Lane Rooms\nlanguage: en-US\nunits: inches\ncurrency: USD\npaper: tabloid",
  "cloths/linen.md": `cloth: Linen
width: 54"
kind: plain
colours: [{ colour: "#8a7a66" }]
price: { trade: 10, per: yard }`,
  "projects/quay/project.md":
    "project: Quay\nclient: { name: Nobody }\nstatus: proposed\ndated: 2026-11-20",
  "projects/quay/den.md": room('20" x 20"'),
  "projects/weir/project.md":
    "project: Weir\nclient: { name: Nobody }\nstatus: proposed\ndated: 2026-11-20",
  "projects/weir/den.md": room('30" x 20"'),
};

test.each(["quay", "quay/den"])(
  "%s alone is worked out, as it is with the others",
  async (only) => {
    const whole = await computedFolder(FILES);
    const alone = await computedFolder(FILES, only);
    expect(alone.quantities(only)).toEqual(whole.quantities(only));
    expect(alone.money(only)).toEqual(whole.money(only));
    expect(alone.quantities("weir")).toBeNull();
    expect(whole.quantities("weir")).not.toBeNull();
    const of = (computed: typeof whole) => computed.pages.filter((page) => page.project === "quay");
    expect(of(alone)).toEqual(of(whole));
    expect(of(alone).length).toBeGreaterThan(0);
    expect(alone.pages.filter((page) => page.project === "weir")).toEqual([]);
    // All that is there is known all the same, so that a name that is not there is told.
    expect(alone.projects).toEqual(["quay", "weir"]);
    expect(alone.rooms).toEqual(whole.rooms);
  },
);

test("a room that a mistake keeps from being read is there all the same, and so are those of a project whose card has one", async () => {
  const computed = await computedFolder({
    ...FILES,
    "projects/quay/attic.md": room("20 x 20").replace("Den", "Attic"),
    "projects/weir/project.md": "project: Weir\nclient: { name: Nobody }\nstatus: sleeping",
  });
  expect(computed.rooms).toEqual(["quay/den", "quay/attic", "weir/den"]);
  expect(computed.brokenProjects).toEqual(["quay", "weir"]);
});
