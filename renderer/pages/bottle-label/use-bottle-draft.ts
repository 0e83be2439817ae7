import { useKeptChoice } from '#renderer/app/use-kept-choice.ts';
import type { BottleDraft } from './bottle-words.ts';

/** What was typed over the usual words of a label, and the batch that it was typed for. */
interface KeptBottle {
  readonly typed: Partial<BottleDraft>;
  readonly usualLot: string;
}

const perBatch: readonly (keyof BottleDraft)[] = ['lot', 'bestBefore'];

function isRecord(body: unknown): body is Record<string, unknown> {
  return typeof body === 'object' && body !== null && !Array.isArray(body);
}

/** What the kitchen kept of a label, as far as it is one. */
export function keptBottle(body: unknown): KeptBottle | null {
  if (!isRecord(body) || !isRecord(body.typed) || typeof body.usualLot !== 'string') return null;
  const fields = ['name', 'base', 'volume', 'bestBefore', 'lot'] as const;
  const { typed } = body;
  const texts = fields.flatMap((field) => (typeof typed[field] === 'string' ? [[field, typed[field]]] : []));
  return { typed: Object.fromEntries(texts), usualLot: body.usualLot };
}

/** The label's words with what was typed over them; another batch has another lot, and another day. */
export function bottleDraft(usual: BottleDraft, kept: KeptBottle | null): BottleDraft {
  if (kept === null) return usual;
  const isSameBatch = kept.usualLot === usual.lot;
  const typed = Object.entries(kept.typed).filter(
    ([field]) => isSameBatch || !perBatch.includes(field as keyof BottleDraft),
  );
  return { ...usual, ...Object.fromEntries(typed) };
}

/** Only what differs from the usual words is kept: what nobody typed follows its recipe. */
export function bottleKept(usual: BottleDraft, draft: BottleDraft): KeptBottle {
  const typed = Object.entries(draft).filter(
    ([field, text]) => field !== 'maker' && text !== usual[field as keyof BottleDraft],
  );
  return { typed: Object.fromEntries(typed), usualLot: usual.lot };
}

/**
 * What stands on a version's bottles, as it was left the last time. Who makes the drink is the same on every label of the kitchen.
 *
 * @param usual what a label says before anybody typed
 */
export function useBottleDraft(version: string, usual: BottleDraft): [BottleDraft, (draft: BottleDraft) => void] {
  const [kept, keep] = useKeptChoice(`bottle label ${version}`, keptBottle);
  const [maker, keepMaker] = useKeptChoice('bottle label maker', (body) => (typeof body === 'string' ? body : null));
  return [
    { ...bottleDraft(usual, kept), maker: maker ?? usual.maker },
    (draft) => {
      keep(bottleKept(usual, draft));
      if (draft.maker !== (maker ?? usual.maker)) keepMaker(draft.maker);
    },
  ];
}
