/** A QR code (ISO/IEC 18004, level M: 15 % may be smudged) as rows of dark and light squares, its quiet border of four included. */
import qrcode from "qrcode-generator";

const BORDER = 4;

export function squareCode(content: string): readonly (readonly boolean[])[] {
  const code = qrcode(0, "M");
  code.addData(content);
  code.make();
  const count = code.getModuleCount();
  const side = count + 2 * BORDER;
  const inside = (at: number) => at >= BORDER && at < BORDER + count;
  return Array.from({ length: side }, (_, row) =>
    Array.from(
      { length: side },
      (_, column) => inside(row) && inside(column) && code.isDark(row - BORDER, column - BORDER),
    ),
  );
}
