import type { ReasonWords } from '../reason-words.ts'

const STRENGTH = { strongly: 'spricht stark', plainly: 'spricht', 'a-little': 'spricht ein wenig' } as const

export const reasons: ReasonWords = {
  prior: (about) => `${about}: vor jeder Messung so häufig, wie Tabellen und Vorgeschichte dieses Motors sagen.`,
  together: (more) => (more ? 'Zusammen sagen die Messungen mehr als jede für sich.' : 'Die Messungen überschneiden sich: ein Teil dessen, was sie sagen, ist dasselbe.'),
  speaks: (what, about, strength, against) => `${what}: ${STRENGTH[strength]} ${against ? 'gegen' : 'für'} „${about}“.`,
  turns: (cylinder, value, leads) => `${cylinder === undefined ? 'Mit' : `Hätte Zylinder ${cylinder}`} ${value} ${cylinder === undefined ? 'stünde' : 'gezeigt, stünde'} „${leads}“ vorn.`,
  concerns: (cylinders) => `Betrifft ${cylinders}.`,
  objections: {
    'mixed-strokes': { says: 'Nicht alle Werte kommen von gleich vielen Hüben; was abweicht, wird nicht verglichen.', do: 'Jeden Zylinder gleich viele Hübe durchdrehen und neu messen.' },
    'mixed-conditions': { says: 'Diese Werte stammen aus einer anderen Messreihe unter anderen Bedingungen und werden nicht verglichen.', do: 'Innerhalb einer Messreihe vergleichen oder alle Zylinder unter denselben Bedingungen neu messen.' },
    'oil-in-diesel': { says: 'In einen Dieselzylinder darf kein Öl: er kann zünden oder den Motor blockieren. Der Nasswert bleibt erhalten, zählt aber nicht.', do: 'Nicht durchdrehen oder starten. Erst das Öl ablassen, dann von Hand drehen.' },
    'no-sister': { says: 'Es sind weniger als zwei Zylinder da, die verglichen werden können.', do: 'Die übrigen unter denselben Bedingungen messen; bei nur einem Zylinder gelten Herstellergrenzen und Druckverlusttest.' },
    incomplete: { says: 'Nicht jeder Zylinder hat einen Wert, der verglichen werden kann.', do: 'Die fehlenden unter denselben Bedingungen messen.' },
    'over-span': { says: 'Die Nadel stand am Ende der Skala oder darüber: der Wert heißt nur „mindestens“.', do: 'Ein Manometer nehmen, dessen Bereich deutlich über dem Wert liegt.' },
    'no-tester': { says: 'Ohne Vordruck und Drossel des Prüfgeräts lässt sich die Leckfläche nicht berechnen.', do: 'Vordruck und Drossel des Prüfgeräts und den gehaltenen Druck notieren.' },
    'not-weighed': { says: 'Es wurde kein brauchbarer Verlust notiert; eine Leckfläche lässt sich nicht berechnen.', do: 'Kolben im Zünd-OT und Schlauch auf Dichtheit prüfen, wiederholen, gehaltenen Druck oder Verlust in Prozent notieren.' },
    'two-stroke': { says: 'Ein Zweitakter ist auf andere Weise undicht, als dieses Modell kennt: Grenzen werden geprüft, Fehler nicht gefolgert.', do: 'Nach Verfahren und Grenzen des Herstellers gehen.' },
    'throttle-shut': { says: 'Die Drosselklappe war zu, oder es sieht so aus: die Werte lassen sich untereinander vergleichen, liegen aber alle zu tief.', do: 'Drossel und Choke ganz öffnen, feststellen und neu messen.' },
    'too-few-strokes': { says: 'Der Druck stieg noch: zu wenige Hübe.', do: 'Durchdrehen, bis der Wert nicht mehr steigt, mindestens fünf Verdichtungshübe, bei allen gleich viele.' },
    'speed-sag': { says: 'Die Werte fallen im Lauf der Messung: der Anlasser wurde langsamer oder der Motor kühlte ab.', do: 'Den ersten Zylinder noch einmal messen; ist er jetzt tiefer, Batterie laden, Motor wärmen und alle neu messen.' },
    'gauge-not-released': { says: 'Kein Wert liegt unter dem vorigen, als hätte die Nadel dort begonnen, wo sie zuletzt stand: das Manometer wurde nicht entlastet.', do: 'Vor jedem Zylinder auf null entlasten und alle neu messen.' },
    'adaptor-leaking': { says: 'Das Manometer hielt seinen Wert keine zehn Sekunden: Adapter oder Rückschlagventil undicht, der Wert kann zu tief sein.', do: 'Dichtung erneuern, Adapter neu setzen, Rückschlagventil ausblasen und neu messen.' },
    'wrong-cylinder': { says: 'Einer ist tief, aber dicht, sein Nachbar normal, aber undicht: ein Wert steht vielleicht beim falschen Zylinder.', do: 'Einen der beiden Tests an beiden Zylindern wiederholen.' },
    'wrong-unit': { says: 'Die Werte weichen um das Verhältnis zweier Druckeinheiten ab.', do: 'Auf die Einheit am Manometer sehen; war sie falsch eingegeben, berichtigen.' },
    rounded: { says: 'Alle Werte liegen auf groben Stufen: sie wurden gerundet und werden so gewichtet.', do: 'Am Manometer bis zum feinsten Strich ablesen.' },
    'piston-off-top': { says: 'Fast alles ging an einer Stelle verloren, was die Kompression nicht bestätigt: der Kolben stand wohl nicht im Zünd-OT.', do: 'Kolben in den Zünd-OT bringen, Kurbelwelle sichern, wiederholen.' },
    'check-valve-left-in': { says: 'Mehrere Zylinder verloren gar nichts: wohl steckt noch ein Rückschlagventil im Schlauch.', do: 'Den Ventileinsatz aus dem Schlauch nehmen und wiederholen.' },
    'regulator-droop': { says: 'Der Vordruck blieb nicht gleich, oder die Prozentzahl passt nicht zu den beiden Manometern.', do: 'Regler prüfen, beide Manometer vor dem Anschließen abgleichen, jedes Mal Vordruck und gehaltenen Druck notieren.' },
    'control-rises': { says: 'Der gute Zylinder stieg mit Öl ebenso: das Öl nahm Raum ein, der Anstieg deutet nicht auf die Ringe.', do: 'Nach dem Druckverlusttest gehen oder mit weniger Öl wiederholen.' },
    'wet-below-dry': { says: 'Mit Öl war der Wert tiefer als trocken, was Öl nicht kann.', do: 'Adapter, Hübe und Batterie prüfen, trocken und nass wiederholen.' },
    'wet-too-high': { says: 'Öl hob den Wert um mehr als zwei Fünftel: zu viel Öl nimmt Raum ein und hebt jeden Zylinder.', do: 'Ablassen, eine kleine abgemessene Menge nehmen und einen guten Zylinder zum Vergleich ölen.' },
    'sea-level-pressure': { says: 'Der eingegebene Luftdruck passt nicht zur Höhe: wohl der auf Meereshöhe umgerechnete Wert eines Wetterberichts.', do: 'Am Ort ein Barometer ablesen oder den Luftdruck weglassen und die Höhe gelten lassen.' },
    'leakage-against-compression': { says: 'Druckverlust und Kompression passen nicht zusammen.', do: 'Beides wiederholen; bleibt es so, nach dem Ventiltrieb sehen (Ventil öffnet nicht) oder nach drehzahlabhängiger Dichtheit.' },
    'repeat-disagrees': { says: 'Die Wiederholungen liegen weiter auseinander, als die Messgeräte erklären.', do: 'Noch einmal messen. Kompression: Adapter neu setzen, gleich viele Hübe, zunächst dem höheren Wert trauen. Druckverlust: den Motor durchdrehen und wieder auf Zünd-OT stellen; bleibt er weg, hing ein Ventil oder es lag etwas auf dem Sitz.' },
  },
}
