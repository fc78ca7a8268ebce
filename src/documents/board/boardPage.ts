import { capital } from "../../units/capital.ts";
import type { Page } from "../page.ts";
import { boardPath, clientIndexPath, clientTree, proposalPath } from "../paths.ts";
import { pictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { wayTo } from "../ways.ts";
import { accentStyle } from "../words/accent.ts";
import { boardOf } from "./board.ts";

/** The presentation board of a room as a document of its own. */
export function boardPage(data: ProjectData, room: RoomData): Page {
  const { project, studio } = data;
  const path = boardPath(project.id, room.record.id);
  const book = pictureBook(clientTree(project.id), "../");
  const board = boardOf(data, room, book, "b");
  const model = {
    kind: "board",
    style: accentStyle(studio),
    board,
    ways: [
      { href: wayTo(path, clientIndexPath(project.id)), text: "All documents" },
      { href: wayTo(path, proposalPath(project.id)), text: "Proposal" },
    ],
  };
  return {
    reader: "client",
    project: project.id,
    room: `${project.id}/${room.record.id}`,
    path,
    title: `${capital(room.record.fields.room)}, ${project.fields.project}`,
    language: studio.fields.language,
    paper: studio.fields.paper,
    pdf: true,
    model,
    pictures: book.pictures,
  };
}
