import { PaperSheet } from '#renderer/parts/paper/paper.tsx';
import type { PaperSize } from '#renderer/parts/paper/paper-size.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { PenScale, scaleLine } from './pen-scale.tsx';
import { words } from './words.ts';

type Tasting = ValueOf<'tastings:open'>;
type Order = Tasting['orders'][number];

// What the parts of a sheet take, as the style sheet sets them.
const head_mm = 58;
const cup_mm = 13;
const scale_mm = 6.4;
const tableRow_mm = 12;

/** Whether every cup has room for its scales with boxes; else figures are written in a table. */
export function hasRoomForScales({ attributes }: Tasting, order: Order, paper: PaperSize): boolean {
  const cups = order.sittings.reduce((sum, { codes }) => sum + codes.length, 0);
  return head_mm + cups * (cup_mm + attributes.length * scale_mm) <= paper.height_mm;
}

/** Whether a table of figures may need a second page. */
export function mayGrow(tasting: Tasting, order: Order, paper: PaperSize): boolean {
  if (tasting.isRanked || hasRoomForScales(tasting, order, paper)) return tasting.isRanked && tasting.samples > 14;
  const cups = order.sittings.reduce((sum, { codes }) => sum + codes.length, 0);
  return head_mm + tasting.attributes.length * 5 + cups * tableRow_mm > paper.height_mm;
}

function Scales({ tasting, codes }: { readonly tasting: Tasting; readonly codes: readonly string[] }) {
  return codes.map((code) => (
    <section key={code} className="pen-cup">
      <h3>{code}</h3>
      <div>
        {tasting.attributes.map((attribute) => (
          <PenScale key={attribute.id} attribute={attribute} />
        ))}
        <p className="pen-remarks">{words.remarks}</p>
      </div>
    </section>
  ));
}

function Figures({ tasting, codes }: { readonly tasting: Tasting; readonly codes: readonly string[] }) {
  return (
    <table className="pen-table">
      <thead>
        <tr>
          <th scope="col">{words.cup}</th>
          {tasting.attributes.map(({ id, name }) => (
            <th key={id} scope="col">
              {name}
            </th>
          ))}
          <th scope="col">{words.remarks}</th>
        </tr>
      </thead>
      <tbody>
        {codes.map((code) => (
          <tr key={code}>
            <th scope="row">{code}</th>
            {tasting.attributes.map(({ id }) => (
              <td key={id} />
            ))}
            <td className="is-remark" />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Places({ codes }: { readonly codes: readonly string[] }) {
  return (
    <div className="pen-places">
      <div>
        <h3>{words.yourCups}</h3>
        <ol>
          {codes.map((code) => (
            <li key={code}>
              <b>{code}</b> <span className="pen-remarks">{words.remarks}</span>
            </li>
          ))}
        </ol>
      </div>
      <div>
        <h3>{words.yourOrder}</h3>
        <ol>
          {codes.map((code, place) => (
            <li key={code}>
              <span>{words.place(place + 1)}</span> <span className="pen-box" />
            </li>
          ))}
        </ol>
        <p className="pen-tie">{words.tieHint}</p>
      </div>
    </div>
  );
}

interface PenSheetProps {
  readonly tasting: Tasting;
  readonly order: Order;
  readonly paper: PaperSize;
}

/** One taster's page. */
export function PenSheet({ tasting, order, paper }: PenSheetProps) {
  const isRoomy = hasRoomForScales(tasting, order, paper);
  const Cups = tasting.isRanked ? Places : isRoomy ? Scales : Figures;
  const doing = tasting.isRanked ? words.doPlaces : isRoomy ? words.doScales : words.doTable;
  return (
    <PaperSheet label={words.sheetOf(order.name)} margin="11mm 12mm" canGrow={mayGrow(tasting, order, paper)}>
      <div className="pen-sheet">
        <header>
          <h2>{order.name}</h2>
          <p>{tasting.name}</p>
          <p className="pen-date">{words.date}</p>
        </header>
        <p>{doing}</p>
        {tasting.isRanked || isRoomy ? null : (
          <dl className="pen-legend">
            {tasting.attributes.map((attribute) => (
              <div key={attribute.id}>
                <dt>{attribute.name}</dt>
                <dd>{scaleLine(attribute)}</dd>
              </div>
            ))}
          </dl>
        )}
        {order.sittings.map(({ sitting, codes }) => (
          <section key={sitting} className="pen-sitting">
            {sitting === 1 ? null : <h3>{words.sitting(sitting)}</h3>}
            <Cups tasting={tasting} codes={codes} />
          </section>
        ))}
      </div>
    </PaperSheet>
  );
}
