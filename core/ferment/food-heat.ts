import { within } from '#core/out-of-domain.ts';
import { type FoodComposition, foodFractions } from './food-composition.ts';
import { freezingPoint_C } from './freezing-point.ts';

// Heat capacities in kJ/(kg·K) as polynomials of the temperature in °C.
// Water: fitted to IAPWS-95 from 0 to 40 °C within 0.0001. Ice: to IAPWS-06 from −20 to 0 °C within 0.001.
// The rest: Choi and Okos (1986), ASHRAE Handbook Refrigeration (2006) ch. 9, table 1.
const heat = {
  water: [4.2193918, -3.407251e-3, 1.1844416e-4, -2.1714883e-6, 1.7876286e-8],
  ice: [2.0967, 7.35e-3],
  protein: [2.0082, 1.2089e-3, -1.3129e-6],
  fat: [1.9842, 1.4733e-3, -4.8008e-6],
  carbohydrate: [1.5488, 1.9625e-3, -5.9399e-6],
  fibre: [1.8459, 1.8306e-3, -4.6509e-6],
  ash: [1.0926, 1.8896e-3, -3.6817e-6],
} as const;

/** Latent heat of melting at 0 °C, kJ/kg. Source: IAPWS-95 and IAPWS-06. */
const fusion_kJ_per_kg = 333.43;

/** A food made ready for heat balances. */
export interface FoodHeat {
  readonly water: number;
  /** Heat of the dry matter: the factors of T, T² and T³. */
  readonly dry: readonly [number, number, number];
  readonly freezing_C: number;
  /** Share of the mass that can freeze: water less what protein binds (0.4 of its mass). */
  readonly freezable: number;
}

/** @throws OutOfDomain when the composition is outside its range */
export function foodHeat(food: FoodComposition, knownFreezing_C: number | null = null): FoodHeat {
  const x = foodFractions(food);
  const term = (power: 0 | 1 | 2) =>
    (x.protein * heat.protein[power] +
      x.fat * heat.fat[power] +
      x.carbohydrate * heat.carbohydrate[power] +
      x.fibre * heat.fibre[power] +
      x.ash * heat.ash[power]) /
    (power + 1);
  return {
    water: x.water,
    dry: [term(0), term(1), term(2)],
    freezing_C: knownFreezing_C ?? freezingPoint_C(food),
    freezable: Math.max(0, x.water - 0.4 * x.protein),
  };
}

/**
 * Ice in a food, as a share of its mass.
 *
 * Method: x = (water − bound water)(1 − freezing point / temperature), the ideal freezing curve.
 *
 * @param temperature_C −40 to 110
 * Accuracy: about 0.05 of the mass.
 * Source: ASHRAE Handbook Refrigeration, Thermal Properties of Foods (the ideal-solution form, bound water 0.4 of protein).
 */
export function iceShare(food: FoodHeat, temperature_C: number): number {
  return temperature_C >= food.freezing_C ? 0 : food.freezable * (1 - food.freezing_C / temperature_C);
}

/**
 * Heat content of a food, zero when it is liquid at 0 °C.
 *
 * Method: a sum over water, ice and dry matter at that temperature; ice by `iceShare`. Leaves out heats of mixing and juice lost.
 *
 * @param temperature_C −40 to 110
 * @returns kJ/kg
 * @throws OutOfDomain outside that range
 * Accuracy: 0.2 % for water and ice; 3 % for frozen food.
 * Source: IAPWS; Choi and Okos (1986).
 * @example foodEnthalpy_kJ_per_kg(foodHeat({ water_g: 100, sugars_g: 0 }), 20) // 83.95
 */
export function foodEnthalpy_kJ_per_kg(food: FoodHeat, temperature_C: number): number {
  const T = within('temperature_C', temperature_C, -40, 110);
  const ice = iceShare(food, T);
  const [one, two, three] = food.dry;
  const dry = T * (one + T * (two + T * three));
  const frozen = ice === 0 ? 0 : ice * (T * (heat.ice[0] + (T * heat.ice[1]) / 2) - fusion_kJ_per_kg);
  return (food.water - ice) * waterHeat(T) + frozen + dry;
}

/** Heat of liquid water above 0 °C. Below it keeps the heat capacity it has there; above 40 °C that of 40 °C is close enough. */
function waterHeat(T: number): number {
  const [a, b, c, d, e] = heat.water;
  if (T < 0) return a * T;
  const t = Math.min(T, 40);
  return t * (a + t * (b / 2 + t * (c / 3 + t * (d / 4 + (t * e) / 5)))) + 4.18 * (T - t);
}

/**
 * Heat capacity of an unfrozen food.
 *
 * Method: Σ xᵢ cpᵢ (Choi–Okos components, real water), fibre counted once.
 *
 * @param temperature_C 0–40; default 20
 * @returns kJ/(kg·K)
 * @throws OutOfDomain outside that range
 * Accuracy: 3 % against the handbook's fruits (which count fibre twice).
 * Source: Choi and Okos (1986); IAPWS-95.
 * @example specificHeat_kJ_per_kgK({ water_g: 100, sugars_g: 0 }) // 4.184
 */
export function specificHeat_kJ_per_kgK(food: FoodComposition, temperature_C = 20): number {
  const T = within('temperature_C', temperature_C, 0, 40);
  const x = foodFractions(food);
  return (
    x.water * polynomial(heat.water, T) +
    x.protein * polynomial(heat.protein, T) +
    x.fat * polynomial(heat.fat, T) +
    x.carbohydrate * polynomial(heat.carbohydrate, T) +
    x.fibre * polynomial(heat.fibre, T) +
    x.ash * polynomial(heat.ash, T)
  );
}

function polynomial(coefficients: readonly number[], T: number): number {
  let sum = 0;
  for (let power = coefficients.length - 1; power >= 0; power -= 1) sum = sum * T + (coefficients[power] ?? 0);
  return sum;
}
