import type { ReasonWords } from '../reason-words.ts'

const STRENGTH = { strongly: 'habla con fuerza', plainly: 'habla', 'a-little': 'habla un poco' } as const

export const reasons: ReasonWords = {
  prior: (about) => `${about}: antes de medir, tan frecuente como dicen las tablas y la historia de este motor.`,
  together: (more) => (more ? 'Juntas, las lecturas dicen más que cada una por sí sola.' : 'Las lecturas se solapan: parte de lo que dicen es lo mismo.'),
  speaks: (what, about, strength, against) => `${what}: ${STRENGTH[strength]} ${against ? 'en contra' : 'a favor'} de «${about}».`,
  turns: (cylinder, value, leads) => `${cylinder === undefined ? 'Con' : `Si el cilindro ${cylinder} hubiera dado`} ${value}, iría delante «${leads}».`,
  concerns: (cylinders) => `Afecta a ${cylinders}.`,
  objections: {
    'mixed-strokes': { says: 'No todos los valores vienen del mismo número de carreras; los distintos no se comparan.', do: 'Gire todos los cilindros el mismo número de carreras y mida de nuevo.' },
    'mixed-conditions': { says: 'Estos valores son de otra sesión, con otras condiciones, y no se comparan con los demás.', do: 'Compare dentro de una sesión o mida todos los cilindros de nuevo en las mismas condiciones.' },
    'oil-in-diesel': { says: 'En un cilindro diésel no debe entrar aceite: puede encenderse o bloquear el motor. La lectura húmeda se guarda, pero no cuenta.', do: 'No gire ni arranque. Saque primero el aceite y luego gire el motor a mano.' },
    'no-sister': { says: 'Hay menos de dos cilindros que se puedan comparar.', do: 'Mida los demás en las mismas condiciones; con un solo cilindro valen los límites del fabricante y la prueba de fugas.' },
    incomplete: { says: 'No todos los cilindros tienen un valor que se pueda comparar.', do: 'Mida los que faltan en las mismas condiciones.' },
    'over-span': { says: 'La aguja estaba al final de la escala o más allá: el valor solo dice «al menos».', do: 'Use un manómetro cuyo alcance supere claramente el valor.' },
    'no-tester': { says: 'Sin la presión de entrada y el restrictor del comprobador no se puede calcular el área de fuga.', do: 'Anote entrada y restrictor del comprobador y la presión mantenida.' },
    'not-weighed': { says: 'No se anotó ninguna pérdida útil; no se puede calcular un área de fuga.', do: 'Compruebe que el pistón está en el punto muerto superior de compresión y la manguera bien unida, repita y anote la presión mantenida o el porcentaje perdido.' },
    'two-stroke': { says: 'Un dos tiempos fuga por otros caminos que los que este modelo conoce: se comprueban límites, no se deducen fallos.', do: 'Siga el procedimiento y los límites del fabricante.' },
    'throttle-shut': { says: 'La mariposa estaba cerrada, o lo parece: los valores se pueden comparar entre sí, pero todos son bajos.', do: 'Abra del todo mariposa y estárter, sujételos y mida de nuevo.' },
    'too-few-strokes': { says: 'La presión aún subía: pocas carreras.', do: 'Gire hasta que el valor deje de subir, al menos cinco carreras de compresión, las mismas para todos.' },
    'speed-sag': { says: 'Los valores bajan a lo largo de la medición: el arranque perdió velocidad o el motor se enfrió.', do: 'Mida otra vez el primer cilindro; si ahora es más bajo, cargue la batería, caliente el motor y mida todos.' },
    'gauge-not-released': { says: 'Ningún valor es menor que el anterior, como si la aguja partiera de donde se quedó: no se descargó el manómetro.', do: 'Descargue el manómetro a cero antes de cada cilindro y mida todos de nuevo.' },
    'adaptor-leaking': { says: 'El manómetro no mantuvo su valor diez segundos: fuga el adaptador o la válvula de retención, y el valor puede ser bajo.', do: 'Cambie la junta, asiente el adaptador, sople la válvula de retención y mida de nuevo.' },
    'wrong-cylinder': { says: 'Uno es bajo pero estanco y su vecino normal pero con fuga: puede que un valor esté en el cilindro equivocado.', do: 'Repita una de las dos pruebas en ambos cilindros.' },
    'wrong-unit': { says: 'Los valores se apartan en la proporción de dos unidades de presión.', do: 'Mire la unidad del manómetro; corríjala si se introdujo mal.' },
    rounded: { says: 'Todos los valores caen en pasos gruesos: se redondearon, y así se pesan.', do: 'Lea el manómetro hasta la marca más fina.' },
    'piston-off-top': { says: 'Casi todo se perdió por un sitio, y la compresión no lo confirma: el pistón no estaría en el punto muerto superior de compresión.', do: 'Lleve el pistón al punto muerto superior de encendido, sujete el cigüeñal y repita.' },
    'check-valve-left-in': { says: 'Varios cilindros no perdieron nada: quedaría una válvula de retención en la manguera.', do: 'Saque el obús de la manguera y repita.' },
    'regulator-droop': { says: 'La presión de entrada no se mantuvo, o el porcentaje no concuerda con los dos manómetros.', do: 'Revise el regulador, iguale los manómetros antes de conectar y anote cada vez entrada y presión mantenida.' },
    'control-rises': { says: 'El cilindro bueno subió con aceite lo mismo: el aceite ocupó espacio, y la subida no señala a los segmentos.', do: 'Guíese por la prueba de fugas o repita con menos aceite.' },
    'wet-below-dry': { says: 'Con aceite el valor fue menor que en seco, cosa que el aceite no puede hacer.', do: 'Revise adaptador, carreras y batería, y repita en seco y con aceite.' },
    'wet-too-high': { says: 'El aceite subió el valor más de dos quintos: demasiado aceite ocupa espacio y sube cualquier cilindro.', do: 'Sáquelo, use una cantidad pequeña y medida, y ponga aceite a un cilindro bueno como control.' },
    'sea-level-pressure': { says: 'La presión del aire introducida no concuerda con la altitud: será la reducida al nivel del mar de un parte meteorológico.', do: 'Lea un barómetro en el lugar o deje la presión en blanco y que cuente la altitud.' },
    'leakage-against-compression': { says: 'Fugas y compresión no concuerdan.', do: 'Repita ambas; si siguen así, mire la distribución (válvula que no abre) o una estanqueidad que cambia con el giro.' },
    'repeat-disagrees': { says: 'Las repeticiones difieren más de lo que explican los instrumentos.', do: 'Mida otra vez. Compresión: asiente el adaptador, gire las mismas carreras y fíese primero del valor más alto. Fugas: gire el motor y vuelva al punto muerto superior de encendido; si la fuga no vuelve, una válvula se quedó abierta o había algo en su asiento.' },
  },
}
