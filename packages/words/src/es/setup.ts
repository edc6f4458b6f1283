import type { Words } from '../en.ts'

export const setup: Words['setup'] = {
  owner: 'Ser el propietario',
  ownerWhat: 'Ha abierto el enlace de un solo uso de esta instalación. La persona que introduzca aquí es propietaria de la cadena: talleres, personas y todo lo demás los organiza el propietario.',
  back: 'Una contraseña nueva',
  backWhat: 'Ha abierto un enlace de un solo uso hecho en el servidor. Terminan todas sus sesiones anteriores y, con ellas, su segundo factor.',
  name: 'Su nombre',
  newPassword: 'Contraseña nueva, al menos 12 caracteres',
  begin: 'Empezar',
  noLink: 'Esta página se abre con el enlace que imprime el servidor. El enlace falta o está cortado.',
  usedLink: 'Este enlace ya se usó o ha pasado un día. Arranque de nuevo el servidor o haga otro en su consola.',
  factor: 'Segundo factor',
  factorWhat: 'Los encargados y los propietarios entran además con un código de una aplicación de autenticación. Hasta que esté puesto, su función duerme.',
  scan: 'Lea esto con la aplicación, o escriba la clave, e introduzca el código que muestra.',
  key: 'Clave',
  code: 'Código de seis cifras',
  keepFactor: 'Guardarlo',
  wrongCode: 'No es el código de ahora. ¿Va bien el reloj del aparato?',
  factorStands: 'Ya hay un segundo factor puesto.',
}
