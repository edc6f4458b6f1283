import type { DemoVehicle } from './types.ts'

const v = (key: string, garage: DemoVehicle['garage'], plate: string, description: string, year: number, customer: string, phone: string | null, family: string, engine: string, more: Partial<DemoVehicle> = {}): DemoVehicle => ({ key, garage, plate, description, year, customer: { name: customer, phone }, family, engine, ...more })

/** Twenty-seven invented vehicles, their engines and keepers. */
export const VEHICLES: readonly DemoVehicle[] = [
  v('grey-estate', 'mill', 'FX 204 B', 'grey estate', 1971, 'Odile Ferncastle', '555 0142', 'Larch four', 'four in line, second engine of this car', { stampedNumber: 'LR 40417', history: { kmSinceRings: 61_000 } }),
  v('blue-saloon', 'mill', 'RD 881 K', 'blue saloon', 1968, 'Henrik Stallard', '555 0177', 'Rowan six', 'six in line', { stampedNumber: 'RS 1182', history: { overheated: true } }),
  v('red-van', 'mill', 'VT 36 M', 'red van', 1974, 'Marrow & Daughters, bakers', '555 0110', 'Larch four', 'four in line', { stampedNumber: 'LR 51290' }),
  v('cream-coupe', 'mill', 'CB 7 LQ', 'cream coupé', 1966, 'Leonie Wadebrook', '555 0163', 'Rowan six', 'six in line, head skimmed', { history: { headSkimmed: true } }),
  v('green-pickup', 'mill', 'TP 519 G', 'green pick-up', 1979, 'Osric Penhallow', '555 0128', 'Elder V8', 'V8', { stampedNumber: 'E8 00931' }),
  v('white-hatch', 'mill', 'WN 62 DA', 'white hatchback', 1998, 'Tilda Merrow', '555 0191', 'Sorrel three', 'three in line'),
  v('brown-tourer', 'mill', 'BT 11 C', 'brown open tourer', 1958, 'Casimir Holloway', '555 0104', 'Larch four', 'four in line, stored two winters', { history: { monthsStored: 20 } }),
  v('black-limousine', 'mill', 'BL 1 VN', 'black limousine', 1972, 'Wedding cars Alderbrook', '555 0185', 'Elder V8', 'V8', { stampedNumber: 'E8 01544' }),
  v('yellow-camper', 'mill', 'YC 448 P', 'yellow camper', 1976, 'Juno Applethwaite', '555 0159', 'Hazel flat four', 'flat four'),
  v('silver-saloon', 'mill', 'SS 90 EE', 'silver saloon', 1994, 'Bram Castellane', '555 0136', 'Hornbeam V6', 'V6'),
  v('harbour-truck', 'harbour', 'HT 27 W', 'harbour flatbed', 1985, 'Seawall Haulage', '555 0211', 'Alder diesel four', 'diesel four', { stampedNumber: 'AD 7718' }),
  v('red-coupe', 'harbour', 'RC 315 D', 'red coupé', 1970, 'Nadia Quenby', '555 0233', 'Rowan six', 'six in line'),
  v('sand-offroader', 'harbour', 'SO 640 F', 'sand-coloured off-roader', 1982, 'Coastal wardens', '555 0247', 'Elder V8', 'V8', { stampedNumber: 'E8 02210' }),
  v('blue-van', 'harbour', 'BV 77 R', 'blue van', 1989, 'Fishmonger Tolland', '555 0202', 'Alder diesel four', 'diesel four'),
  v('teal-hatch', 'harbour', 'TH 5 XO', 'teal hatchback', 1999, 'Ilse Vandermeer-Gray', '555 0268', 'Sorrel three', 'three in line'),
  v('ivory-saloon', 'harbour', 'IS 808 A', 'ivory saloon', 1964, 'Augustin Fairlea', '555 0219', 'Larch four', 'four in line'),
  v('orange-beach-car', 'harbour', 'OB 21 S', 'orange beach car', 1973, 'Dunes rental', '555 0255', 'Aspen twin', 'air-cooled twin', { stampedNumber: 'AT 300' }),
  v('navy-estate', 'harbour', 'NE 467 J', 'navy estate', 1991, 'Saoirse Blackmere', '555 0280', 'Hornbeam V6', 'V6'),
  v('green-roadster', 'tannery', 'GR 12 T', 'grüner Roadster', 1967, 'Lukas Birkenau', '555 0301', 'Larch four', 'Reihenvierzylinder'),
  v('grey-saloon', 'tannery', 'GL 733 H', 'graue Limousine', 1975, 'Frieda Sandkamp', '555 0318', 'Rowan six', 'Reihensechszylinder'),
  v('white-flat', 'tannery', 'WB 58 K', 'weißer Kombi', 1977, 'Emil Tannwald', '555 0322', 'Hazel flat four', 'Boxer vier', { history: { kmSinceRings: 400 } }),
  v('fire-engine', 'tannery', 'FW 1 OT', 'altes Löschfahrzeug', 1963, 'Feuerwehrverein Altgerben', '555 0340', 'Elder V8', 'V8', { history: { monthsStored: 9 } }),
  v('farm-diesel', 'tannery', 'HD 94 L', 'Hoflader', 1987, 'Hof Wiesengrund', '555 0355', 'Alder diesel four', 'Diesel vier'),
  v('bubble-car', 'tannery', 'KR 3 B', 'Kleinwagen, rund', 1959, 'Rosalind Perlmutt', '555 0366', 'Aspen twin', 'Zweizylinder, luftgekühlt'),
  v('copper-coupe', 'tannery', 'KC 251 Z', 'kupfernes Coupé', 1993, 'Matthis Ehrental', '555 0379', 'Hornbeam V6', 'V6'),
  v('violet-saloon', 'mill', 'VS 330 N', 'violet saloon', 1996, 'Perpetua Lonsdowne', '555 0197', 'Hornbeam V6', 'V6'),
  v('plum-saloon', 'tannery', 'PL 64 W', 'pflaumenblaue Limousine', 1992, 'Hedwig Kupferschmitt', '555 0388', 'Hornbeam V6', 'V6'),
]
