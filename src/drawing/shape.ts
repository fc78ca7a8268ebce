/**
 * Shapes in millimetres of the real thing; x to the right, y down. A shape names the surface that it shows, and the document binds
 * each surface to a cloth's tile, a flat colour or bare paper. Numbers only: no pixels, no paper, no scale.
 */
export type PathData = string;

/** Pen widths in millimetres on paper, whatever the drawing's scale (line weights after ISO 128, from memory). */
export type Pen =
  | "cut"
  | "outline"
  | "edge"
  | "dimension"
  | "fold"
  | "hidden"
  | "centre"
  | "seam"
  | "level";

/** What fills a closed shape. */
export type Fill =
  /** Cloth of a named surface; the tile's origin (its main motif's middle) stands at x, y; turned clockwise. */
  | { readonly surface: string; readonly x: number; readonly y: number; readonly turnDeg?: number }
  /** A flat of a named tone: wood, metal, glass, paint, paper, shadow. */
  | {
      readonly tone:
        | "wood"
        | "wood-dark"
        | "metal"
        | "glass"
        | "white"
        | "shadow"
        | "ceramic"
        | "paper";
    }
  /** Slanting lines 1.6 mm apart on paper: waste. */
  | { readonly hatch: "waste" }
  /** A colour that the record gives. */
  | { readonly hex: string };

export type Shape =
  | {
      readonly shape: "path";
      readonly d: PathData;
      readonly fill: Fill | null;
      readonly pen: Pen | null;
    }
  /** Light falling down a face: white at the head, dark at the foot, clipped to d. */
  | {
      readonly shape: "shading";
      readonly d: PathData;
      readonly light: number;
      readonly dark: number;
      /** `glow`: a lamp behind cloth, white in the middle low down and nothing at the edge. */
      readonly direction: "down" | "across" | "glow";
    }
  /** Cloth hung in folds between x and x + width: `flatWidth` of cloth pressed into `pleats` folds. */
  | {
      readonly shape: "folds";
      readonly surface: string;
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly flatWidth: number;
      readonly pleats: number;
      readonly originX: number;
      readonly originY: number;
      readonly hem: "wavy" | "straight";
      /** Where a tie-back holds it: the folds draw in to this width about their middle. */
      readonly waist?: { readonly y: number; readonly width: number };
      /** Hairlines falling from the valleys, as from a pleated heading; false where another heading draws its own. */
      readonly creases?: boolean;
    }
  /** A photograph shown whole in a rectangle (a picture in its frame, a rug seen from above). */
  | {
      readonly shape: "photograph";
      readonly surface: string;
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
    }
  /** Text at 3.5 mm on paper; a line feed begins a new line. `dxPaper`, `dyPaper` shift it by millimetres of paper. */
  | {
      readonly shape: "words";
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly anchor: "start" | "middle" | "end";
      readonly weight?: "regular" | "bold";
      readonly turnDeg?: number;
      readonly dxPaper?: number;
      readonly dyPaper?: number;
    }
  /** Words with a leader: its arrow or dot stands at x, y, its text begins `dxPaper`, `dyPaper` millimetres of paper away. */
  | {
      readonly shape: "note";
      readonly x: number;
      readonly y: number;
      readonly dxPaper: number;
      readonly dyPaper: number;
      readonly text: string;
      readonly end: "arrow" | "dot" | "none";
      /** The x of a line to the right of its text, which is left out on drawings so small that it would cross it: a sign says the same. */
      readonly within?: number;
    }
  /** A sign of fixed size on paper: a motif's middle as a white lozenge, the way up the cloth as an arrow along the turn (0 points right). */
  | {
      readonly shape: "sign";
      readonly sign: "lozenge" | "arrow";
      readonly x: number;
      readonly y: number;
      readonly turnDeg?: number;
    }
  | {
      readonly shape: "group";
      readonly children: readonly Shape[];
      readonly x?: number;
      readonly y?: number;
      readonly turnDeg?: number;
      readonly mirror?: boolean;
      /** What is not there yet: its outlines alone, in the quiet ink that the rendering gives. */
      readonly toCome?: boolean;
    };

/** One dimension: between two points, measured along one axis, on a chain `level` steps off the drawing. Text is ready-made. */
export interface Dimension {
  readonly axis: "horizontal" | "vertical";
  readonly from: number;
  readonly to: number;
  readonly side: "top" | "bottom" | "left" | "right";
  readonly level: number;
  readonly text: string;
  /** The figure alone, written where the whole text does not fit between the arrows and the figure does. */
  readonly brief?: string;
}

/** A drawing of one thing: its shapes, its dimensions, and the box that it fills, from (0, 0). */
export interface Drawing {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly shapes: readonly Shape[];
  readonly dimensions: readonly Dimension[];
  /** What it shows, in words, for those who cannot see it. */
  readonly title: string;
  readonly description: string;
  /** On a maker's sheet it stands below the views, over the whole width: pieces laid flat. */
  readonly below?: true;
}
