import { Link } from 'wouter';
import { formatQuantity, type MeasureSystem } from '#core/units/format-quantity.ts';
import { parsePrice } from '#core/units/parse-price.ts';
import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import type { Kept } from '#renderer/app/use-kept.ts';
import { dateWords } from '#renderer/format/moments.ts';
import { moneyWords } from '#renderer/format/money.ts';
import { amountOf, type TypedAmount, typedVolume } from '#renderer/format/typed-amount.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { joined } from '#renderer/format/words.ts';
import { AmountField } from '#renderer/parts/amount-field/amount-field.tsx';
import { useAmount } from '#renderer/parts/amount-field/use-amount.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { type LastReading, servingFigures } from './serving-figures.ts';
import type { Make, Version } from './use-make.ts';
import { words } from './words.ts';

const said = words.serving;
const most_mL = 5000;

function typedServing(text: string, system: MeasureSystem): TypedAmount {
  const typed = typedVolume(text, system);
  return typed.kind === 'amount' && typed.value > most_mL
    ? { kind: 'fault', message: phrase`A serving holds more than zero, up to 5 L (5 1/4 qt).` }
    : typed;
}

/** A price of the base goes by volume. */
function typedBasePrice(text: string): TypedAmount {
  if (text.trim() === '') return { kind: 'none' };
  const read = parsePrice(text);
  if (!read.ok) return { kind: 'fault', message: read.problem.message };
  return 'price_per_L' in read.value
    ? { kind: 'amount', value: read.value.price_per_L }
    : { kind: 'fault', message: phrase`A base is poured: write its price per L, per qt or per gal.` };
}

/** A serving as it was last asked about: its size and what the base costs, as typed. */
interface Serving {
  readonly size?: string;
  readonly price?: string;
}

function lastServing(kept: unknown): Serving {
  if (typeof kept !== 'object' || kept === null) return {};
  const { size, price } = kept as Record<keyof Serving, unknown>;
  return { ...(typeof size === 'string' ? { size } : {}), ...(typeof price === 'string' ? { price } : {}) };
}

interface ServingPartProps {
  readonly version: Version;
  readonly make: Make;
  readonly base: { readonly name: string; readonly sugar_g_per_L: number | null };
  readonly last: LastReading | null;
  readonly kept: Kept;
}

/** What a glass costs and how much sugar it holds, with what is unknown said. */
export function ServingPart({ version, make, base, last, kept }: ServingPartProps) {
  const measures = useMeasures();
  const currency = useAnswer('kitchen:open', {}).data?.currency ?? null;
  const before = lastServing(kept.body);
  const size = useAmount(
    before.size ?? (measures.system === 'us' ? '1 cup' : '250 mL'),
    (text) => typedServing(text, measures.system),
    (text) => kept.keep({ size: text, price: price.text }),
  );
  const price = useAmount(before.price ?? '', typedBasePrice, (text) => kept.keep({ size: size.text, price: text }));
  const serving_mL = amountOf(size.typed);
  const figures =
    serving_mL === undefined
      ? null
      : servingFigures(version, serving_mL, { ...base, price_per_L: amountOf(price.typed) ?? null }, make.pantry);
  const grams = (sugar_g: number) => `${shownNumber(Number(sugar_g.toFixed(1)))} g`;
  const read =
    last === null
      ? said.noReading
      : last.sugar_g_per_L === null || serving_mL === undefined
        ? said.tooLight
        : grams((last.sugar_g_per_L * serving_mL) / 1000);
  const named = (names: readonly string[]) =>
    joined([...new Set(names.map((name) => (name === base.name ? said.theBase : name)))]);
  return (
    <>
      <div className="field-grid">
        <AmountField label={said.size} amount={size} isTried missing={words.notVolume} />
        <AmountField label={said.basePrice} hint={said.basePriceHint} amount={price} isTried />
      </div>
      {figures === null ? null : (
        <dl className="serving" aria-live="polite">
          <div>
            <dt>
              <Explained words={said.cost} />
            </dt>
            <dd>
              {figures.cost === null ? said.noPrice(named(figures.missing.prices)) : moneyWords(figures.cost, currency)}
              {figures.missing.prices.some((name) => name !== base.name) ? (
                <>
                  {'. '}
                  <Link href="/pantry">{said.toPantry}</Link>
                </>
              ) : null}
            </dd>
          </div>
          <div>
            <dt>
              <Explained words={said.sugarIn} />
            </dt>
            <dd>
              {figures.sugar_g === null ? said.noSugar(named(figures.missing.sugars)) : grams(figures.sugar_g)}
              <p className="soft small">
                <Explained words={said.sugarInBasis} />
              </p>
            </dd>
          </div>
          <div>
            <dt>
              <Explained words={said.sugarRead} />
            </dt>
            <dd>
              {read}
              {last === null ? null : (
                <p className="soft small">
                  {said.readBasis(
                    last.reading.brix === null
                      ? phrase`SG ${formatQuantity(last.reading.sg ?? 0, 'sg', measures.system)}`
                      : formatQuantity(last.reading.brix, 'brix', measures.system),
                    last.jar,
                    dateWords(last.reading.takenAt),
                  )}
                </p>
              )}
            </dd>
          </div>
        </dl>
      )}
    </>
  );
}
