import { OPS, type PDFPageProxy } from "pdfjs-dist/legacy/build/pdf.mjs";

type Matrix = readonly [number, number, number, number, number, number];

/** A box on a page, in millimetres of paper. */
export interface PaperBox {
  readonly width: number;
  readonly height: number;
}

/** A picture as it stands on a page: its box, and its pixels an inch across. */
export interface PaintedPicture extends PaperBox {
  readonly ppi: number;
}

const MM = 25.4 / 72;

function times(a: Matrix, b: Matrix): Matrix {
  return [
    a[0] * b[0] + a[2] * b[1],
    a[1] * b[0] + a[3] * b[1],
    a[0] * b[2] + a[2] * b[3],
    a[1] * b[2] + a[3] * b[3],
    a[0] * b[4] + a[2] * b[5] + a[4],
    a[1] * b[4] + a[3] * b[5] + a[5],
  ];
}

const across = (m: Matrix): number => Math.hypot(m[0], m[1]);
const down = (m: Matrix): number => Math.hypot(m[2], m[3]);

/** Every path and every picture of a page with its size on paper, read by pdf.js from the finished PDF. Turned ones are left out. */
export async function geometryOf(
  page: PDFPageProxy,
): Promise<{ paths: readonly PaperBox[]; pictures: readonly PaintedPicture[] }> {
  const { fnArray, argsArray } = await page.getOperatorList();
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  const stack: Matrix[] = [];
  const paths: PaperBox[] = [];
  const pictures: PaintedPicture[] = [];
  for (const [at, op] of fnArray.entries()) {
    const args = argsArray[at];
    if (op === OPS.save) stack.push(matrix);
    else if (op === OPS.restore) matrix = stack.pop() ?? matrix;
    else if (op === OPS.transform) matrix = times(matrix, args as Matrix);
    else if (op === OPS.paintFormXObjectBegin) {
      stack.push(matrix);
      if (args?.[0]) matrix = times(matrix, args[0] as Matrix);
    } else if (op === OPS.paintFormXObjectEnd) matrix = stack.pop() ?? matrix;
    else if (op === OPS.constructPath && args?.[2]) {
      const [x1, y1, x2, y2] = args[2] as number[];
      if (Math.abs(matrix[1]) > 1e-9) continue;
      paths.push({
        width: ((x2 as number) - (x1 as number)) * across(matrix) * MM,
        height: ((y2 as number) - (y1 as number)) * down(matrix) * MM,
      });
    } else if (op === OPS.paintImageXObject) {
      const [, widthPx] = args as [string, number];
      const width = across(matrix);
      pictures.push({ width: width * MM, height: down(matrix) * MM, ppi: widthPx / (width / 72) });
    }
  }
  return { paths, pictures };
}
