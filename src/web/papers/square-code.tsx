/** The square code of a label, drawn. */
import { useEffect, useState } from "react";

/** Squares of quiet border on each side (ISO/IEC 18004). */
const BORDER = 4;

export function SquareCode({ content, text }: { readonly content: string; readonly text: string }) {
  const [drawn, setDrawn] = useState<{ readonly side: number; readonly path: string } | null>(null);
  useEffect(() => {
    let waiting = true;
    // Fetched with the first label: no other screen draws a code.
    void import("qrcode-generator").then(({ default: qrcode }) => {
      const code = qrcode(0, "M");
      code.addData(content);
      code.make();
      const count = code.getModuleCount();
      const squares = Array.from({ length: count * count }, (_, at) => [Math.floor(at / count), at % count])
        .filter(([row = 0, column = 0]) => code.isDark(row, column))
        .map(([row = 0, column = 0]) => `M${column + BORDER} ${row + BORDER}h1v1h-1z`);
      if (waiting) setDrawn({ side: count + 2 * BORDER, path: squares.join("") });
    });
    return () => {
      waiting = false;
    };
  }, [content]);
  return (
    <figure className="square-code">
      {drawn !== null && (
        <svg viewBox={`0 0 ${drawn.side} ${drawn.side}`} role="img" aria-label={`${text}: ${content}`}>
          <rect width={drawn.side} height={drawn.side} fill="#fff" />
          <path d={drawn.path} fill="#000" shapeRendering="crispEdges" />
        </svg>
      )}
      <figcaption>{text}</figcaption>
    </figure>
  );
}
