import type { Binding } from "../../drawing/binding.ts";
import { renderDrawing } from "../../drawing/renderDrawing.ts";
import type { Shape } from "../../drawing/shape.ts";
import type { Wall } from "../../room/walls.ts";
import type { SchemePhase } from "../../scheme/phases.ts";
import { wordsIn } from "../../units/spelling.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { roomBindings } from "../room/bindings.ts";
import { itemsAtWall } from "../room/placeItems.ts";
import { wallFrame, wallShapes } from "../room/wallShapes.ts";
import { lookUpsOf } from "../sheets/lookUps.ts";
import type { Markup } from "../words/marks.ts";
import { capital, listed, roleWord } from "../words/phrases.ts";
import type { Budget } from "./budget.ts";

/** The room once a step is done. */
export interface StepPicture {
  readonly name: string;
  readonly sum: string;
  readonly picture: Markup | null;
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

/** The walls at which something of the room is seen: what stands or hangs there, lies on what does, or papers it. */
export function toldWalls(room: RoomData): Wall[] {
  return (room.plan.walls ?? []).filter(
    (wall) =>
      room.plan.covers.some(
        (c) => c.what === "paper" && c.faces.some((f) => f.wall === wall.name),
      ) || [...room.plan.placements.values()].some((p) => p.wallBox?.wall === wall.name),
  );
}

/** At this size a pattern is only noise: each cloth stands for its average colour. */
function flat(bindings: (surface: string) => Binding): (surface: string) => Binding {
  return (surface) => {
    const b = bindings(surface);
    return b === null || "hex" in b ? b : { hex: b.averageHex };
  };
}

/** The room's walls side by side, from left to right as one turns in it, as they are after a step. */
function pictureOf(
  data: ProjectData,
  room: RoomData,
  walls: readonly Wall[],
  book: PictureBook,
  prefix: string,
  title: string,
): Markup | null {
  const height = room.plan.height?.toMm();
  const length = walls.reduce((sum, wall) => sum + wall.length.toMm(), 0);
  if (!height || length <= 0) return null;
  const scale = Math.max(length / WIDTH, height / HEIGHT);
  const names: string[] = [];
  let x = 0;
  const shapes = walls.map((wall): Shape => {
    const items = itemsAtWall(room, wall.name, height, lookUpsOf(data));
    names.push(...items.map((i) => i.item.record.title));
    const wide = wall.length.toMm();
    const at = x;
    x += wide;
    return {
      shape: "group",
      x: at,
      y: 0,
      children: [
        ...wallShapes(wall, room, height),
        ...items.flatMap((i) => i.shapes),
        wallFrame(wide, height),
      ],
    };
  });
  const rendered = renderDrawing(
    {
      widthMm: length,
      heightMm: height,
      shapes,
      dimensions: [],
      title,
      description: [...new Set(names)].join("; ") || "empty walls",
    },
    {
      scale: 1 / scale,
      bindings: flat(roomBindings(data, room, scale, book)),
      style: "cloth",
      dimensions: false,
      idPrefix: prefix,
    },
  );
  const wide = (length / scale).toFixed(1);
  return {
    html: `<div class="step-picture" style="--w:${wide}">${rendered.svg.replace(/ width="[^"]*mm" height="[^"]*mm"/, "")}</div>`,
  };
}

/** What a step brings: the cloths that are seen with it for the first time and the roles that they fill, what is painted, and the colours that it is the first to carry. */
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
  return [cloths, ...paints, colours].filter((w) => w !== "").join(" ");
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
    const walls = toldWalls(room);
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
            roomAfter(room, phase),
            walls,
            book,
            `${prefix}-${at}-${n}`,
            `${name} after this step`,
          ),
          words: wordsOf(own, room, data, say),
        },
      ];
    });
    const told =
      walls.length > 0
        ? `The ${listed(walls.map((w) => w.name))} ${walls.length === 1 ? "wall" : "walls, side by side"}.`
        : "";
    return pictures.length > 1 ? [{ room: name, walls: told, pictures }] : [];
  });
}
