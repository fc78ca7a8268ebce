import { type Binding, flatOf } from "./binding.ts";
import { greyOf } from "./grey.ts";
import { type DrawingStyle, strokeOf } from "./pens.ts";
import type { Pen } from "./shape.ts";
import { isTiled, tileDefinition } from "./tileLayer.ts";
import { toneColour } from "./tones.ts";
import { escapeText } from "./words.ts";

/** What one rendering shares: its style, its scale, its definitions, each made once. Private to drawing/. */
export class Pencase {
  readonly style: DrawingStyle;
  readonly scale: number;
  readonly #bindings: (surface: string) => Binding;
  readonly #prefix: string;
  readonly #penShare: number;
  readonly #toCome: { readonly ground: string; readonly ink: string };
  /** How many groups of what is not there yet we are in. */
  #absent = 0;
  readonly #definitions: string[] = [];
  readonly #known = new Map<string, string>();
  #count = 0;

  constructor(
    style: DrawingStyle,
    scale: number,
    bindings: (surface: string) => Binding,
    prefix: string,
    penShare = 1,
    toCome = { ground: "#ffffff", ink: "#8d918e" },
  ) {
    this.#penShare = penShare;
    this.#toCome = toCome;
    this.style = style;
    this.scale = scale;
    this.#bindings = bindings;
    this.#prefix = prefix;
  }

  /** True inside what is not there yet. */
  get isAbsent(): boolean {
    return this.#absent > 0;
  }

  /** Draws something as not there yet. */
  absent(draw: () => string): string {
    this.#absent += 1;
    const drawn = draw();
    this.#absent -= 1;
    return drawn;
  }

  /** The colour behind what is not there yet. */
  get ground(): string {
    return this.flat(this.#toCome.ground);
  }

  newId(): string {
    this.#count += 1;
    return `${this.#prefix}-${this.#count}`;
  }

  define(definition: string): void {
    this.#definitions.push(definition);
  }

  definitions(): string {
    return this.#definitions.length > 0 ? `<defs>${this.#definitions.join("")}</defs>` : "";
  }

  /** What a surface is bound to, seen in this style: grey flats in the grey room, bare paper on a maker's sheet. */
  binding(surface: string): Binding {
    if (this.style === "workshop") return null;
    const bound = this.#bindings(surface);
    if (bound !== null && "href" in bound && bound.isGrey) return bound;
    if (this.style === "grey" && bound !== null) return { hex: greyOf(flatOf(bound)) };
    return bound;
  }

  /** The id of a definition that many shapes share, made at its first use. */
  shared(definition: (id: string) => string): string {
    const key = definition("");
    const known = this.#known.get(key);
    if (known) return known;
    const id = this.newId();
    this.#known.set(key, id);
    this.define(definition(id));
    return id;
  }

  /** True of a drawing no larger than a hand, whose finest lines would only be noise. */
  get isSmall(): boolean {
    return this.#penShare < 1;
  }

  /** The id of a surface's tile, defined at its first use; one picture serves all surfaces of one cloth. */
  tileId(binding: Binding): string {
    if (!isTiled(binding)) throw new Error("Only a tiled binding has a tile");
    const { tile } = binding;
    const key = JSON.stringify([tile.href, tile.widthMm, tile.heightMm]);
    const known = this.#known.get(key);
    if (known) return known;
    const id = this.newId();
    this.#known.set(key, id);
    this.define(tileDefinition(id, tile, escapeText(tile.href), this.scale));
    return id;
  }

  stroke(pen: Pen | null): string {
    const scale = this.scale / this.#penShare;
    if (!this.isAbsent) return strokeOf(pen, this.style, scale);
    const isOutline = pen === "outline" || pen === "edge" || pen === "cut";
    return isOutline
      ? strokeOf("fold", this.style, scale).replace(
          /stroke="[^"]*"/,
          `stroke="${this.#toCome.ink}"`,
        )
      : 'stroke="none"';
  }

  /** A named tone as a colour; on a maker's sheet everything is white. */
  tone(name: string): string {
    if (this.style === "workshop") return "#ffffff";
    const hex = toneColour(name);
    return this.style === "grey" ? greyOf(hex) : hex;
  }

  flat(hex: string): string {
    if (this.style === "workshop") return "#ffffff";
    return this.style === "grey" ? greyOf(hex) : hex;
  }

  /** Millimetres of paper, in the drawing's own millimetres. */
  paper(mm: number): number {
    return mm / this.scale;
  }
}
