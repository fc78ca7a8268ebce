import { readableInk } from "../../colour/contrast.ts";
import type { Binding } from "../../drawing/binding.ts";
import { renderDrawing } from "../../drawing/renderDrawing.ts";
import type { Shape } from "../../drawing/shape.ts";
import type { Wall } from "../../room/walls.ts";
import type { SchemePhase } from "../../scheme/phases.ts";
import { capital } from "../../units/capital.ts";
import { wordsIn } from "../../units/spelling.ts";
import { PAPER } from "../board/mix.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { roomBindings } from "../room/bindings.ts";
import { type ItemsByWall, itemsByWall } from "../room/placeItems.ts";
import { wallFrame, wallShapes } from "../room/wallShapes.ts";
import { lookUpsOf } from "../sheets/lookUps.ts";
import type { Markup } from "../words/marks.ts";
import { itemsPhrases, type Language, listed, roleWord } from "../words/phrases.ts";
import type { Budget } from "./budget.ts";

/** The room once a step is done. */
export interface StepPicture {
  readonly name: string;
  readonly sum: string;
  readonly picture: Markup | null;
  /** True where the picture leaves its words room beside it. */
  readonly beside: boolean;
  readonly words: string;
}

/** A room step by step. */
export interface StepRow {
  readonly room: string;
  readonly walls: string;
  readonly pictures: readonly StepPicture[];
}

/** The walls side by side fill the letter's text at most, and stand so high at most, in millimetres on paper. */
const WIDTH = 164;
const HEIGHT = 30;

/** A narrower picture has its words beside it, where they would else leave half of the letter white. */
const BESIDE = 112;

/** How much smaller than the walls their picture is: it fills the width or the height it may have. */
const scaleOf = (lengthMm: number, heightMm: number): number =>
  Math.max(lengthMm / WIDTH, heightMm / HEIGHT);

const lengthOf = (walls: readonly Wall[]): number =>
  walls.reduce((sum, wall) => sum + wall.length.toMm(), 0);

/** The room with only what is there after a phase; walls keep their colour until they are painted. */
export function roomAfter(room: RoomData, phase: number): RoomData {
  const there = new Set(room.scheme.phases.filter((p) => p.phase <= phase).flatMap((p) => p.items));
  const items = room.items.filter((i) => there.has(i.record.id));
  const covers = room.plan.covers.filter((c) => there.has(c.item));
  const coloured = items.some((i) => i.record.kind === "paint" || i.record.kind === "wallpaper");
  return {
    ...room,
    items,
    plan: { ...room.plan, covers },
    wallColour: coloured ? room.wallColour : null,
  };
}

/** The walls at which something of the room is seen: what stands, hangs or is drawn there, or papers it. */
export function toldWalls(room: RoomData, placed: ItemsByWall): Wall[] {
  return (room.plan.walls ?? []).filter(
    (wall) =>
      room.plan.covers.some(
        (c) => c.what === "paper" && c.faces.some((f) => f.wall === wall.name),
      ) || (placed.walls.get(wall.name) ?? []).length > 0,
  );
}

/** A repeat narrower than this on paper is only noise: the cloth then stands for its average colour. */
const LEAST_REPEAT_MM = 0.9;

/** Cloths as they are seen at one to `scale`. */
function asSeen(bindings: (surface: string) => Binding, scale: number) {
  return (surface: string): Binding => {
    const b = bindings(surface);
    if (b === null || !("tile" in b)) return b;
    const small = Math.min(b.tile.widthMm, b.tile.heightMm) / scale < LEAST_REPEAT_MM;
    return small ? { hex: b.averageHex } : b;
  };
}

/** Pens of a picture of this size, against those of a sheet. */
const PEN_SHARE = 0.45;

/**
 * The room's walls side by side, from left to right as one turns in it, as they are after a step: what is there in its cloth, at the
 * same places in every step, and what is still to come in outline.
 */
function pictureOf(
  data: ProjectData,
  room: RoomData,
  after: RoomData,
  walls: readonly Wall[],
  placed: ItemsByWall,
  book: PictureBook,
  prefix: string,
  title: string,
): Markup | null {
  const height = room.plan.height?.toMm();
  const length = lengthOf(walls);
  if (!height || length <= 0) return null;
  const scale = scaleOf(length, height);
  const there = new Set(after.items.map((i) => i.record.id));
  const [names, toCome] = [new Set<string>(), new Set<string>()];
  let x = 0;
  const shapes = walls.map((wall): Shape => {
    const items = placed.walls.get(wall.name) ?? [];
    const wide = wall.length.toMm();
    const at = x;
    x += wide;
    return {
      shape: "group",
      x: at,
      y: 0,
      children: [
        ...wallShapes(wall, after, height),
        ...items.map(({ item, shapes }): Shape => {
          const isThere = there.has(item.record.id);
          (isThere ? names : toCome).add(item.record.title);
          return { shape: "group", children: shapes, toCome: !isThere };
        }),
        wallFrame(wide, height),
      ],
    };
  });
  const ground = after.wallColour ?? PAPER;
  const ink = readableInk(ground, "#8d918e", "#c9cdc9");
  const words = [
    names.size > 0 ? `${[...names].join("; ")}.` : "Empty walls.",
    toCome.size > 0 ? `Still to come, in outline: ${[...toCome].join("; ")}.` : "",
  ];
  const rendered = renderDrawing(
    {
      widthMm: length,
      heightMm: height,
      shapes,
      dimensions: [],
      title,
      description: words.filter((w) => w !== "").join(" "),
    },
    {
      scale: 1 / scale,
      bindings: asSeen(roomBindings(data, after, scale, book), scale),
      style: "cloth",
      dimensions: false,
      penShare: PEN_SHARE,
      toCome: { ground, ink },
      idPrefix: prefix,
    },
  );
  const wide = (length / scale).toFixed(1);
  return {
    html: `<div class="step-picture" style="--w:${wide}">${rendered.svg.replace(/ width="[^"]*mm" height="[^"]*mm"/, "")}</div>`,
  };
}

/**
 * What a step brings: the cloths that are seen with it for the first time and the roles that they fill, what is painted, and the
 * colours that it is the first to carry. Where all of that was there before, the pieces themselves.
 */
function wordsOf(
  phase: SchemePhase,
  room: RoomData,
  data: ProjectData,
  say: ReturnType<typeof wordsIn>,
): string {
  const painted = room.items.filter(
    (i) => i.record.kind === "paint" && phase.items.includes(i.record.id),
  );
  const paints = painted.map((i) => {
    const name = (i.record.fields as { name?: string }).name;
    return name ? say`${i.record.title} in ${name}.` : say`${i.record.title} painted.`;
  });
  const told = phase.newRoles.map(({ role, cloth, name }) => {
    const paper = data.records.cloths.get(cloth)?.fields.roll !== undefined;
    const word = roleWord(role, data.swatches.get(cloth)?.kind ?? null, paper);
    return `${name} (${word.toLowerCase()})`;
  });
  const cloths = told.length > 0 ? `${listed(told)}.` : "";
  const colours = phase.newColours.length > 0 ? say`Carries ${listed(phase.newColours)}.` : "";
  const brought = [cloths, ...paints, colours].filter((w) => w !== "");
  if (brought.length > 0) return brought.join(" ");
  const items = room.items.filter((i) => phase.items.includes(i.record.id));
  const language = data.studio.fields.language as Language;
  return items.length > 0 ? `${capital(listed(itemsPhrases(items, language)))}.` : "";
}

/** Every room step by step: what each step costs, the wall as it then is, and the colours and cloths that it brings. */
export function stepRows(
  data: ProjectData,
  budget: Pick<Budget, "groups">,
  book: PictureBook,
  prefix: string,
): StepRow[] {
  const say = wordsIn(data.studio.fields.language);
  const numbers = [
    ...new Set(data.rooms.flatMap((r) => r.scheme.phases.map((p) => p.phase)).filter((p) => p > 0)),
  ].sort((a, b) => a - b);
  if (numbers.length < 2) return [];
  return data.rooms.flatMap((room, at): StepRow[] => {
    const height = room.plan.height?.toMm() ?? 0;
    const placed = itemsByWall(room, height, lookUpsOf(data));
    const walls = toldWalls(room, placed);
    const length = lengthOf(walls);
    const name = capital(room.record.fields.room);
    const pictures = numbers.flatMap((phase, n): StepPicture[] => {
      const own = room.scheme.phases.find((p) => p.phase === phase);
      const group = budget.groups.find((g) => g.phase === phase);
      if (!own || !group) return [];
      return [
        {
          name: group.name,
          sum: group.rooms.find((r) => r.room === room.record.id)?.sum ?? "",
          picture: pictureOf(
            data,
            room,
            roomAfter(room, phase),
            walls,
            placed,
            book,
            `${prefix}-${at}-${n}`,
            `${name} after this step`,
          ),
          beside: height > 0 && length / scaleOf(length, height) <= BESIDE,
          words: wordsOf(own, room, data, say),
        },
      ];
    });
    const told =
      walls.length > 0
        ? `The ${listed(walls.map((w) => w.name))} ${walls.length === 1 ? "wall" : "walls, side by side"}; what is still to come is in outline.`
        : "";
    return pictures.length > 1 ? [{ room: name, walls: told, pictures }] : [];
  });
}
