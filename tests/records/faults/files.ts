import { changed, ROOM, STUDIO } from "../studio.ts";
import type { Fault } from "./fault.ts";

/** Whole files that are missing, unread, copied or left out. */
export const FILES: readonly Fault[] = [
  {
    name: "a copy of a room that was left in its folder",
    files: { "projects/quay/dining-room copy.md": STUDIO[ROOM] as string },
    says: [
      "projects/quay/dining-room.md:2:1 warning room-called-twice: The room in dining-room copy.md is called Dining room too, and both are drawn, bought for and charged. -> Give one of them another name; or, if it is a copy, move it out of the project's folder.",
    ],
  },
  {
    name: "a photograph that is not there",
    files: changed("cloths/fern-trellis.md", `fern-trellis.jpg`, `Fern-Trellis.jpg`),
    says: [
      "cloths/fern-trellis.md:3:16 error picture-missing: There is no picture “Fern-Trellis.jpg” beside this file. -> Did you mean fern-trellis.jpg?",
    ],
  },
  {
    name: "a photograph elsewhere",
    files: changed("cloths/fern-trellis.md", `fern-trellis.jpg`, `../fern-trellis.jpg`),
    says: [
      "cloths/fern-trellis.md:3:16 error picture-name: “../fern-trellis.jpg” is not in the card's own folder. -> Put the picture beside the card, and write its name alone.",
    ],
  },
  {
    name: "a cloth of the mix that is used nowhere",
    files: changed(ROOM, `cloth: slub-linen`, `cloth: fern-trellis`),
    says: [
      "projects/quay/dining-room.md:11:26 warning cloth-unused: “slub-linen” is in the mix, but no item is made of it. -> Use it for an item, or take it out of the mix.",
    ],
  },
  {
    name: "a room without items",
    files: { [ROOM]: "---\nroom: A\n---\n" },
    says: [
      'projects/quay/dining-room.md:2:1 warning room-without-items: Nothing is listed in this room yet. -> Write what is to be made or placed below "items:".',
    ],
  },
  {
    name: "a project without rooms",
    files: { [ROOM]: null },
    says: [
      "projects/quay/project.md:null:null warning project-without-rooms: This project has no room yet. -> Write a file for each room beside project.md.",
    ],
  },
  {
    name: "a project without its card",
    files: { "projects/quay/project.md": null },
    says: [
      "projects/quay/project.md:null:null error project-card-missing: The project “quay” has no project.md. -> Write one, or let roomcloth begin it: roomcloth new project",
    ],
  },
  {
    name: "a studio without its card",
    files: { "studio.md": null },
    says: [
      "studio.md:null:null error studio-missing: There is no studio.md. -> Write one, or let roomcloth begin it: roomcloth new studio DIR",
    ],
  },
  {
    name: "a room that the project's list leaves out",
    files: {
      ...changed("projects/quay/project.md", `status: proposed`, `status: proposed\nrooms: [hall]`),
      "projects/quay/hall.md": "---\nroom: Hall\n---\n",
    },
    says: [
      'projects/quay/hall.md:2:1 warning room-without-items: Nothing is listed in this room yet. -> Write what is to be made or placed below "items:".',
      "projects/quay/project.md:5:1 warning room-not-listed: The room “dining-room” is not in this list; it comes after the others. -> Add it where it should come.",
    ],
  },
  {
    name: "a room in the project's list that is not there",
    files: changed(
      "projects/quay/project.md",
      `status: proposed`,
      `status: proposed\nrooms: [dining-rom]`,
    ),
    says: [
      "projects/quay/project.md:5:1 warning room-not-listed: The room “dining-room” is not in this list; it comes after the others. -> Add it where it should come.",
      "projects/quay/project.md:5:9 error room-unknown: There is no room called “dining-rom”. -> Did you mean dining-room?",
    ],
  },
  {
    name: "a file in another language",
    files: { "cloths/slub-linen.md": "---js\nmodule.exports = {}\n---\n" },
    says: [
      'cloths/slub-linen.md:1:1 error front-matter-language: Front matter in “js” is not read here. -> Write the front matter as plain "key: value" lines, and the first line as three hyphens alone:\n---',
    ],
  },
  {
    name: "a file without front matter",
    files: { "cloths/slub-linen.md": "# Slub linen\n" },
    says: [
      'cloths/slub-linen.md:1:1 error front-matter-missing: This file has no front matter. -> The file should begin with a line of three hyphens, then "key: value" lines, then three hyphens again.',
    ],
  },
  {
    name: "a file that is empty",
    files: { "cloths/slub-linen.md": "" },
    says: [
      'cloths/slub-linen.md:1:1 error file-empty: There is nothing in this file. -> The file should begin with a line of three hyphens, then "key: value" lines, then three hyphens again.',
    ],
  },
  {
    name: "front matter that is not closed",
    files: { "cloths/slub-linen.md": "---\ncloth: Slub linen\n" },
    says: [
      "cloths/slub-linen.md:1:1 error front-matter-unclosed: The front matter is opened here and never closed. -> Put a line of three hyphens below its last key:\n---",
    ],
  },
  {
    name: "a file in no place where it would be read",
    files: { "cloth/velvet.md": "x", "Studio.md": "x" },
    says: [
      "Studio.md:null:null warning file-out-of-place: This file is in no place where it would be read. -> Call it studio.md.",
      "cloth/velvet.md:null:null warning file-out-of-place: This file is in no place where it would be read. -> Call the folder cloths.",
    ],
  },
  {
    name: "two files whose names are too alike",
    files: { "cloths/Slub Linen.md": "---\ncloth: Slub linen\n---\n" },
    says: [
      "cloths/slub-linen.md:null:null error file-twice: This file's name is too like that of cloths/Slub Linen.md. -> Give one of them another name.",
    ],
  },
  {
    name: "faults in several files",
    files: {
      ...changed("studio.md", `currency: USD`, `currency: dollars`),
      ...changed("cloths/fern-trellis.md", `width: 54"`, `widht: 54"`),
      ...changed(ROOM, `drop: 92"`, `drop: 92`),
      "objects/tiled-stove.md": '---\nobject: Stove: tiled\nsize: 30" x 20"\nstays: perhaps\n---\n',
    },
    says: [
      "cloths/fern-trellis.md:4:1 error key-unknown: “widht” is not a key that can stand here. -> Did you mean width?",
      'objects/tiled-stove.md:2:9 error colon-in-words: These words have a colon with a space behind it, so “Stove” is read as a key. -> Put the words in quotes. The line should read:\nobject: "Stove: tiled"',
      "objects/tiled-stove.md:4:8 error yes-or-no: “perhaps” is neither yes nor no. -> Write yes or no.",
      'projects/quay/dining-room.md:18:11 error length-without-unit: “92” has no unit. -> Write 92" for inches or 92 cm for centimetres.',
      "studio.md:5:11 error currency-unknown: “dollars” is not a currency's code. -> Write for example USD, CAD, GBP or EUR.",
    ],
  },
];
