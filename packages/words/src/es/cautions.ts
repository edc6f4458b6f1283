import type { Words } from '../en.ts'

export const cautions: Words['cautions'] = {
  cranking: 'Sin marcha, ruedas calzadas, encendido muerto, combustible cortado. Manos, pelo, cables y tableta lejos de ventilador y correas; la llave gira solo cuando usted lo dice.',
  'petrol-mist': 'Hay niebla de gasolina en las bujías abiertas: ni chispa ni llama. Ojos cubiertos al soplar los pozos.',
  'liquid-in-cylinder': 'Posible líquido en un cilindro: bujías fuera, girar a mano, sin arranque.',
  'wet-test-oil': 'Solo gasolina. Mida el aceite, el mínimo; salpica. Expúlselo antes de poner las bujías.',
  'oil-in-diesel': 'Nunca aceite en un diésel. Si entró: ni girar ni arrancar, primero vaciar.',
  'diesel-spray': 'Inyección parada. El chorro atraviesa la piel: nunca afloje un tubo del conducto común.',
  'diesel-gauge': 'Un diésel pide manómetro y adaptador hechos para él.',
  'compressed-air': 'El aire puede girar el motor. Pistón en punto muerto superior, sin marcha, barra quitada antes del aire; primero 20 psi, manos fuera de la línea. Purgue antes de soltar. Ni oído, ni mano, ni llama en una abertura; nunca aire a una persona.',
  'running-engine': 'Escape conducido: monóxido de carbono. Lejos de ventilador y correas. Sin prueba en carretera con el vacío de freno suelto.',
  'high-tension': 'Ponga a masa el cable suelto; solo ratos cortos, el combustible sin quemar calienta el escape.',
  'current-clamp': 'Bujías puestas, encendido y combustible muertos. Los coches viejos pueden llevar positivo a masa.',
  'coolant-cap': 'Abra el tapón solo en frío. Nunca más presión que la del tapón.',
  borescope: 'Nunca gire el motor con el boroscopio dentro.',
  'strip-down': 'Las juntas viejas pueden llevar amianto: mojadas, sin cepillo de alambre ni aire. Guantes contra el aceite usado.',
}
