import type { Words } from '../en.ts'

export const cautions: Words['cautions'] = {
  cranking: 'Gang heraus, Räder verkeilt, Zündung tot, Kraftstoff zu. Hände, Haare, Kabel und Tablet weg von Lüfter und Riemen; der Schlüssel dreht nur auf Ihr Wort.',
  'petrol-mist': 'An offenen Kerzenlöchern steht Benzinnebel: kein Funke, keine Flamme. Augen schützen beim Ausblasen der Kerzenschächte.',
  'liquid-in-cylinder': 'Verdacht auf Flüssigkeit im Zylinder: Kerzen heraus, von Hand drehen, kein Anlasser.',
  'wet-test-oil': 'Nur bei Benzinmotoren. Öl abmessen, so wenig wie nötig; es spritzt zurück. Ausstoßen, ehe die Kerzen hineinkommen.',
  'oil-in-diesel': 'Niemals Öl in einen Diesel. Ist welches drin: nicht durchdrehen, nicht starten, erst ablassen.',
  'diesel-spray': 'Einspritzung abgestellt. Der Strahl dringt durch die Haut: nie eine Leitung des gemeinsamen Verteilers lösen.',
  'diesel-gauge': 'Ein Diesel braucht Manometer und Adapter, die dafür gebaut sind.',
  'compressed-air': 'Luft kann den Motor drehen. Kolben im oberen Totpunkt, Gang heraus, Drehhebel ab vor der Luft; erst 20 psi, Hände aus der Linie. Entlüften vor dem Abschrauben. Kein Ohr, keine Hand, keine Flamme an eine Öffnung, nie Luft auf Menschen.',
  'running-engine': 'Abgas absaugen: Kohlenmonoxid. Weg von Lüfter und Riemen. Keine Probefahrt ohne Bremsunterdruck.',
  'high-tension': 'Das abgezogene Kabel erden; nur kurz, unverbrannter Kraftstoff heizt den Auspuff.',
  'current-clamp': 'Kerzen drin, Zündung und Kraftstoff tot. Alte Wagen können Plus an Masse haben.',
  'coolant-cap': 'Deckel nur kalt öffnen. Nie mehr Druck, als auf dem Deckel steht.',
  borescope: 'Nie den Motor drehen, solange das Endoskop steckt.',
  'strip-down': 'Alte Dichtungen können Asbest enthalten: anfeuchten, keine Drahtbürste, keine Druckluft. Handschuhe gegen Altöl.',
}
