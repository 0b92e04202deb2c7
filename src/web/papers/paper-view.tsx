/** A paper on the screen, as it is printed: in its own language and direction, whatever the page's. */
import { useId } from "react";
import type { Block, Paper, PaperPictures, PaperTable } from "../../wire/paper-api.ts";
import { SquareCode } from "./square-code.tsx";

interface Props {
  readonly paper: Paper;
  /** addresses of the job's pictures */
  readonly pictures: readonly string[];
}

export function PaperView({ paper, pictures }: Props) {
  return (
    <article className="sheet" lang={paper.language} dir={paper.direction} aria-label={paper.title}>
      <h1 dir="auto">{paper.title}</h1>
      {paper.facts.length > 0 && (
        <dl className="sheet-facts">
          {paper.facts.map(({ name, value }) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>
                <bdi>{value}</bdi>
              </dd>
            </div>
          ))}
        </dl>
      )}
      {paper.blocks.map((block, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: blocks of one paper keep their order
        <BlockView key={at} block={block} pictures={pictures} />
      ))}
    </article>
  );
}

function BlockView({ block, pictures }: { readonly block: Block; readonly pictures: readonly string[] }) {
  switch (block.block) {
    case "heading":
      return <h2>{block.text}</h2>;
    case "text":
      return <p className="sheet-text">{block.text}</p>;
    case "list":
      return block.numbered ? (
        <ol>
          <Items items={block.items} />
        </ol>
      ) : (
        <ul>
          <Items items={block.items} />
        </ul>
      );
    case "caution":
      return (
        <>
          {block.items.map((item) => (
            <p className="sheet-caution" key={item}>
              {item}
            </p>
          ))}
        </>
      );
    case "table":
      return <TableView table={block} />;
    case "pictures":
      return <PicturesView block={block} pictures={pictures} />;
    case "code":
      return <SquareCode content={block.content} text={block.text} />;
  }
}

function PicturesView({
  block,
  pictures,
}: {
  readonly block: PaperPictures;
  readonly pictures: readonly string[];
}) {
  return (
    <>
      <h2>{block.text}</h2>
      <ul className="sheet-pictures" data-across={block.across}>
        {block.captions.map((caption, at) => (
          <li key={caption}>
            <figure>
              <img src={pictures[at]} alt={block.unreadable} />
              <figcaption>{caption}</figcaption>
            </figure>
          </li>
        ))}
      </ul>
    </>
  );
}

function Items({ items }: { readonly items: readonly string[] }) {
  // biome-ignore lint/suspicious/noArrayIndexKey: two lines of a list may read the same
  return items.map((item, at) => <li key={at}>{unbroken(item)}</li>);
}

/** A quantity stays on one line with its unit: `18` at the end of one and `V` at the start of the next read as two things. */
function unbroken(text: string): string {
  return text.replace(/(?<=\d) (?=[GMkmµnp]?(?:V|A|W|Ω|F|H|Hz|min|ohm)(?![A-Za-z]))/g, "\u00a0");
}

/** Wide tables fold on a narrow screen: each row one under the other, the column's head beside each cell. */
function TableView({ table: { head, rows, sums } }: { readonly table: PaperTable }) {
  const id = useId();
  return (
    <table className={head.length > 3 ? "sheet-table wide" : "sheet-table"}>
      <thead>
        <tr>
          {head.map((words, column) => (
            <th scope="col" key={words} id={`${id}-${column}`}>
              {words}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two lines of a bill may read the same
          <tr key={at} className={at >= rows.length - sums ? "sum" : undefined}>
            {row.map((cell, column) => (
              <td
                // biome-ignore lint/suspicious/noArrayIndexKey: columns keep their order
                key={column}
                headers={`${id}-${column}`}
                data-head={head[column]}
                className={typeof cell === "string" ? undefined : "figure"}
              >
                {unbroken(typeof cell === "string" ? cell : cell.text)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
