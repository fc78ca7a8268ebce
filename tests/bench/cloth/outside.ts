import { createRequire } from "node:module";
import type { PatternKind } from "../../../src/cloth/clothMeasure.ts";
import { seeded } from "../../cloth/made.ts";
import { inksOf } from "./colourPairs.ts";
import type { Drawing } from "./tile.ts";

/*
 * Tiles that others drew: hero-patterns 2.1.0 (MIT; its drawings by Steve Schoger, CC BY 4.0), geopattern 1.2.3 (MIT) and
 * textures 1.2.3 (MIT). Used by tests alone; nothing of them is shipped.
 */

type Named = PatternKind | "print";

const require = createRequire(import.meta.url);
const hero = require("hero-patterns") as Record<
  string,
  (colour: string, opacity: number) => string
>;
const geo = require("geopattern") as {
  generate(text: string, options: { generator: string }): { toString(): string };
};
const textures = require("textures") as Record<"circles" | "lines" | "paths", () => Maker>;

/** All drawings of outside origin, in one fixed order. */
export function outsideDrawings(): Drawing[] {
  return [...heroDrawings(), ...geoDrawings(), ...textureDrawings()];
}

// By eye, before anything was measured. What is not named here two people would call by two names.
const HERO_KINDS: Readonly<Record<string, Named>> = {
  ...kinds(
    "geometric",
    "autumn aztec bevelCircle boxes brickWall cage charlieBrown churchOnSunday circlesAndSquares circuitBoard connections",
    "curtain cutout eyes endlessClouds fancyRectangles flippedDiamonds floorTile groovy happyIntersection hexagons",
    "intersectingCircles jupiter kiwi lisbon melt moroccan morphingDiamonds overcast overlappingDiamonds overlappingHexagons",
    "parkayFloor pieFactory pixelDots roundedPlusConnected slantedStars squares squaresInSquares stampCollection steelBeams",
    "temple volcanoLamp zigZag fallingTriangles texture corkScrew",
  ),
  ...kinds("print", "anchorsAway leaf skulls glamorous iLikeFood floatingCogs"),
  ...kinds("check", "graphPaper rails tinyCheckers bathroomFloor"),
  ...kinds("stripe", "diagonalLines diagonalStripes stripes"),
};

const GEO_KINDS: Readonly<Record<string, Named>> = {
  ...kinds("check", "plaid"),
  ...kinds(
    "geometric",
    "octogons overlappingCircles hexagons overlappingRings triangles squares concentricCircles diamonds tessellation",
    "nestedSquares mosaicSquares chevrons xes plusSigns",
  ),
};

function kinds(kind: Named, ...names: string[]): Record<string, Named> {
  return Object.fromEntries(
    names
      .join(" ")
      .split(" ")
      .map((name) => [name, kind]),
  );
}

function heroDrawings(): Drawing[] {
  return Object.keys(hero)
    .sort()
    .map((name, i) => {
      const { ground, inks } = inksOf(seeded(100 + i), 1);
      const svg = decodeURIComponent((hero[name] as (typeof hero)[string])(inks[0] as string, 1));
      const outer = /<svg([^>]*)>([\s\S]*)<\/svg>/.exec(svg);
      const attributes = outer?.[1] ?? "";
      const size = (key: string) =>
        Number(new RegExp(`\\b${key}="([\\d.]+)"`).exec(attributes)?.[1]);
      const rest = attributes.replace(/\b(width|height|viewBox|xmlns)="[^"]*"/g, "");
      return {
        name: `hero-${name}`,
        width: size("width"),
        height: size("height"),
        body: `<rect width="100%" height="100%" fill="${ground}"/><g ${rest}>${outer?.[2] ?? ""}</g>`,
        kind: HERO_KINDS[name] ?? null,
      };
    });
}

const GENERATORS =
  "octogons overlappingCircles plusSigns xes sineWaves hexagons overlappingRings plaid triangles squares concentricCircles diamonds tessellation nestedSquares mosaicSquares chevrons";
/** Drawings that each generator makes. */
const EACH = 4;

function geoDrawings(): Drawing[] {
  return GENERATORS.split(" ").flatMap((generator) =>
    Array.from({ length: EACH }, (_, i) => {
      const svg = geo.generate(`cloth ${generator} ${i}`, { generator }).toString();
      const outer = /<svg[^>]*width="([\d.]+)" height="([\d.]+)">([\s\S]*)<\/svg>/.exec(svg);
      return {
        name: `geo-${generator}-${i}`,
        width: Number(outer?.[1]),
        height: Number(outer?.[2]),
        body: outer?.[3] ?? "",
        kind: GEO_KINDS[generator] ?? null,
      };
    }),
  );
}

/** What a maker of `textures` needs of a selection of the page: elements and their attributes. */
interface Selection {
  append(name: string): Selection;
  attr(key: string, value: string | number): Selection;
}

interface Maker {
  (selection: Selection): void;
  background(colour: string): Maker;
  size(px: number): Maker;
  fill(colour: string): Maker;
  stroke(colour: string): Maker;
  strokeWidth(px: number): Maker;
  radius(px: number): Maker;
  complement(): Maker;
  orientation(name: string): Maker;
  d(name: string): Maker;
}

class Element implements Selection {
  readonly children: Element[] = [];
  readonly attributes: string[] = [];
  constructor(readonly name: string) {}
  append(name: string): Element {
    const child = new Element(name);
    this.children.push(child);
    return child;
  }
  attr(key: string, value: string | number): this {
    this.attributes.push(`${key}="${value}"`);
    return this;
  }
  toString(): string {
    return `<${this.name} ${this.attributes.join(" ")}>${this.children.join("")}</${this.name}>`;
  }
}

function textureDrawings(): Drawing[] {
  const made: Drawing[] = [];
  const add = (name: string, kind: Named | null, make: (ink: string) => Maker) => {
    const { ground, inks } = inksOf(seeded(700 + made.length), 1);
    const root = new Element("g");
    make(inks[0] as string).background(ground)(root);
    const pattern = root.children[0]?.children[0] as Element;
    const size = (key: string) =>
      Number(/"([\d.]+)"/.exec(pattern.attributes.find((a) => a.startsWith(`${key}=`)) ?? "")?.[1]);
    made.push({
      name: `textures-${name}`,
      width: size("width"),
      height: size("height"),
      body: pattern.children.join(""),
      kind,
    });
  };
  const { circles, lines, paths } = textures;
  add("circles", null, (ink) => circles().radius(4).fill(ink));
  add("circles-offset", null, (ink) => circles().radius(4).fill(ink).complement());
  add("rings", "geometric", (ink) =>
    circles().radius(5).fill("none").stroke(ink).strokeWidth(2).complement(),
  );
  for (const [i, turn] of ["0/8", "1/8", "2/8", "3/8", "4/8", "5/8", "6/8", "7/8"].entries()) {
    add(`lines-${i}`, "stripe", (ink) =>
      lines()
        .orientation(turn)
        .stroke(ink)
        .strokeWidth(3 + (i % 3) * 2),
    );
  }
  for (const shape of ["squares", "nylon", "waves", "woven", "crosses", "caps", "hexagons"]) {
    add(shape, shape === "waves" ? null : "geometric", (ink) =>
      paths().d(shape).stroke(ink).strokeWidth(2).fill("none"),
    );
  }
  return made;
}
