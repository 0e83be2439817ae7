import type { Caution } from '#core/ferment/caution.ts';
import type { JarVessel } from '#core/ferment/jar-input.ts';
import type { JarSheet } from '#core/ferment/jar-sheet.ts';
import { pressureCautions } from '#core/ferment/pressure-cautions.ts';
import { mouldCaution } from '#core/ferment/standing-cautions.ts';
import { phrase } from '#core/words/phrase.ts';
import { joined } from '#renderer/format/words.ts';

/** A level's sheet; null where it can't be worked out. */
export interface LevelSheet {
  readonly level: string;
  readonly sheet: Pick<JarSheet, 'alcohol' | 'carbonation' | 'cautions'> | null;
}

/** What a jar's cautions of one code are ranked by: the gravest speaks for all. */
function gravity({ sheet }: LevelSheet): number {
  const gauge = sheet?.carbonation?.gauge_bar;
  return (sheet?.alcohol.ifAllSugar_pctVol ?? 0) + (gauge === undefined ? 0 : Math.max(gauge.ambient, gauge.at35));
}

/**
 * The cautions of a trial's levels, each code once. One that concerns only some levels names them; where the figures differ, the gravest
 * is said, with its level.
 *
 * @param levels with their sheets; without any sheet the vessel's own cautions and mould remain
 */
export function cautionsOfSheets(levels: readonly LevelSheet[], vessel: JarVessel): Caution[] {
  const known = levels.filter(({ sheet }) => sheet !== null);
  if (known.length === 0) return [...pressureCautions(vessel, null), mouldCaution()];
  const all = known.flatMap((one) => (one.sheet?.cautions ?? []).map((caution) => ({ one, caution })));
  return [...Map.groupBy(all, ({ caution }) => caution.code).values()].flatMap((own): Caution[] => {
    const gravest = own.toSorted((a, b) => gravity(b.one) - gravity(a.one))[0];
    if (gravest === undefined) return [];
    const differ = new Set(own.map(({ caution }) => caution.message)).size > 1;
    if (known.length === 1 || (!differ && own.length === known.length)) return [gravest.caution];
    const names = joined(own.map(({ one }) => `“${one.level}”`));
    const most = phrase`most in “${gravest.one.level}”`;
    const isAll = own.length === known.length;
    const about = isAll
      ? phrase`The ${most}`
      : differ && own.length > 1
        ? phrase`In ${names}, the ${most}`
        : phrase`In ${names}`;
    return [{ ...gravest.caution, message: `${about}: ${gravest.caution.message}` }];
  });
}
