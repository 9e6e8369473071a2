/** Something that is no press-in fastener, and the words that name it. */
export interface OtherThing {
  readonly what: string;
  readonly pattern: RegExp;
}

const words = (what: string, pattern: string): OtherThing => ({
  what,
  pattern: new RegExp(`(?<![\\p{L}])(?:${pattern})(?![\\p{L}])`, 'giu'),
});

/** Words that make a row a press-in fastener or leave it possible; a row with one of them is never put aside. */
export const PRESS_IN_WORDS =
  /clinch|press[ -]?(?:in|fit|ed|nut|stud)|stand[ -]?offs?|captive|spring[ -]?loaded|retractable|retain(?:ed|ing) (?:panel )?screw|floating|swag(?:e|ing)|broach|panel (?:screw|fastener)s?|flush[ -]?(?:nut|stud|head|pin)|einpre(?:ss|ß)|einziehmutter|autosertissable|[àa] sertir|autoclavante|autorremach|autobloccante a pressione|inpers|zelfklinkend|wciskan|压铆|压入|圧入|カシメ|クリンチ/i;

/** A bare word that could be either kind of fastener: asked about, never put aside. */
export const OPEN_WORDS =
  /(?<!\p{L})(?:nuts?|studs?|pins?|spacers?|inserts?|bush(?:ing)?s?|fasteners?|hardware|muttern?|bolzen|stifte?|buchsen?|[ée]crous?|goujons?|inserti?|tuercas?|esp[áa]rragos?|pernos?|dadi|dado|prigionier[oi]|porcas?|moer(?:en)?|mutter|nakr[eę]tk[ai])(?!\p{L})|螺母|螺柱|螺钉柱|ナット|スタッド|スペーサ/iu;

/** Threaded and driven hardware: a thread in the same row is what one expects. Compounds stand before their last word. */
export const LOOSE_HARDWARE: readonly OtherThing[] = [
  words(
    'rivet nut',
    '(?:blind )?rivet(?:ed|ing)?[ -]?nuts?|nut[ -]?rivets?|blindnietmuttern?|[ée]crous? [àa] rivet(?:er)?',
  ),
  words(
    'weld nut',
    '(?:projection |spot |hex )?weld(?:ed|ing)?[ -]?nuts?|nuts?,? ?(?:projection |spot )?weld(?:ed)?|schwei(?:ss|ß)muttern?',
  ),
  words(
    'weld stud',
    '(?:projection |spot |cd |capacitor discharge )?weld(?:ed|ing)?[ -]?(?:studs?|pins?)|studs?,? ?weld(?:ed)?|schwei(?:ss|ß)bolzen',
  ),
  words(
    'hex nut',
    'hex(?:agon(?:al)?)?\\.?(?: ?(?:jam|lock|flange|thin|full|machine|heavy))?[ -]?nuts?|nuts?,? ?(?:plain )?hex(?:agon(?:al)?)?|machine screw nuts?|jam[ -]?nuts?|sechskantmuttern?',
  ),
  words(
    'lock nut',
    '(?:nylon[ -]?(?:insert|lock)|prevailing torque|all[ -]?metal)[ -]?(?:lock)?(?:ing)?[ -]?nuts?|lock[ -]?nuts?|k[ -]?lock nuts?|keps nuts?|nuts?,? ?lock(?:ing)?',
  ),
  words(
    'nut',
    '(?:wing|acorn|cap|dome|square|tee|t|slot|sliding|cage|clip|speed|barrel|coupling|castle|slotted|flange|flanged|serrated flange|knurled thumb)[ -]?nuts?',
  ),
  words(
    'washer',
    '(?:flat |lock |spring |split |star |fender |plain |sealing )?wash(?:er)?s?|wshr|unterlegscheiben?|scheiben?|rondelles?|arandelas?|rondell[ae]|ringen?|podk[lł]adk[ai]|垫圈|ワッシャー?|座金',
  ),
  words(
    'pin',
    '(?:dowel|cotter|split|spring|roll|taper|clevis|hinge|grooved|quick release|locating dowel)[ -]?pins?|r[ -]?clips?|split pins?',
  ),
  words(
    'rivet',
    '(?:blind |pop |solid |drive )?rivets?|nieten?|blindnieten?|rivets? aveugles?|remaches?|ribattini?|rivetti|铆钉|リベット',
  ),
  words(
    'screw',
    '(?:machine |cap |set |grub |self[ -]?tapping |sheet metal |wood |thumb |shoulder |socket |pan head )*screws?|scr|shcs|bhcs|fhcs|phms|fhms|schrauben?|vis|tornillos?|viti|vite|parafusos?|schroef|schroeven|skruvar?|[sś]rub[ay]|wkr[eę]t[y]?|螺钉|螺丝|ねじ|ビス|ネジ',
  ),
  words('bolt', '(?:carriage |hex |eye |u[ -]?|anchor |shoulder )?bolts?|boulons?|bulloni|bullone|螺栓|ボルト'),
  words('threaded rod', 'threaded (?:rod|bar)s?|all[ -]?thread|gewindestangen?'),
];

/** Sheet parts and everything else. A row that names one of these and a thread may still be a fastener and where it goes. */
export const OTHER_PARTS: readonly OtherThing[] = [
  words(
    'label',
    'labels?|decals?|stickers?|name ?plates?|rating plates?|lbl|etiketten?|aufkleber|étiquettes?|etiquetas?',
  ),
  words('gasket', 'gaskets?|seals?|o[ -]?rings?|foam(?: strip)?|dichtung(?:en)?|joints? torique|weather ?strip'),
  words('cable', 'cables?|wires?|wiring|harness(?:es)?|cords?|jumpers?|kabel|câbles?'),
  words(
    'connector',
    '(?:\\d{1,4}[ -]?pins? |pin )?(?:connectors?|headers?|sockets?|plugs?|terminals?|terminal blocks?)|\\d{1,4}[ -]?pins?|stecker',
  ),
  words(
    'electrical part',
    'pcbs?|pcba|circuit boards?|switch(?:es)?|fuses?|relays?|sensors?|fans?|power suppl(?:y|ies)|transformers?|batter(?:y|ies)|leds?|lamps?|displays?|motors?',
  ),
  words('hinge', 'hinges?|scharniere?|charnières?|bisagras?|cerniere?'),
  words('latch', 'latch(?:es)?|locks?|cam ?locks?|handles?|knobs?|keys?|griffe?'),
  words('foot', 'feet|foot|casters?|castors?|bumpers?'),
  words('grommet', 'grommets?|cable glands?|strain reliefs?'),
  words(
    'adhesive',
    'adhesives?|glue|tapes?|epox(?:y|ies)|thread ?lock(?:er|ing compound)?|sealants?|silicone|grease|paint|primer|kleber|colle',
  ),
  words('spring', 'springs?|magnets?|bearings?'),
  words('packaging', 'packaging|cartons?|bags?|pallets?|foam inserts?|manuals?|drawings?'),
  words('bracket', 'brackets?|brkts?|mounts?|gussets?|stiffeners?|winkel|halter|équerres?|soportes?|staff[ae]'),
  words(
    'cover',
    'covers?|cvr|lids?|caps?|hoods?|guards?|shields?|abdeckung(?:en)?|deckel|capots?|couvercles?|tapas?|coperchi[o]?',
  ),
  words('door', 'doors?|hatch(?:es)?|türen?|portes?|puertas?'),
  words('enclosure', 'enclosures?|housings?|chassis|cabinets?|frames?|cases?|boxes|box|gehäuse'),
  words('shelf', 'shel(?:f|ves)|trays?|rails?|drawers?|baffles?|bezels?|partitions?'),
  words(
    'panel',
    '(?:front |rear |side |back |top |bottom |left |right )*(?:panels?|pnl)|panneaux?|pannell[oi]|paneel|面板|パネル',
  ),
  words(
    'sheet',
    '(?:sheet ?metal|(?:alum(?:inum|inium)?|steel|stainless|galvanized) (?:sheets?|plates?)|sheets?|sht|blanks?)(?: metal)?|blech(?:teil)?e?|tôles?|chapas?|lamier[ae]|钣金|板金',
  ),
  words('plate', '(?<!(?:zinc|nickel|tin|chrome|cad|cadmium|silver|gold)[ -]?)plates?|platten?|plaques?|piastr[ae]'),
  words('profile', 'extrusions?|profiles?|tubes?|tubing|pipes?|hoses?|bars?|rods?|beams?'),
  words('assembly', 'assembl(?:y|ies)|assys?|weldments?|sub-?ass(?:emb)?l?y|kits?|baugruppen?'),
  words('clip', 'clips?|clamps?|ties|tie ?wraps?'),
];

const TOTAL_WORDS =
  'total|totals|sub ?-?totals?|grand totals?|totale|totaal|totalt|subtotaal|sous-total|total général|total general|gesamt|gesamtsumme|zwischensumme|summe|somme|suma|razem';
/** A cell that labels a sum, with or without the sum in it. */
export const TOTAL = new RegExp(
  `^(?:${TOTAL_WORDS})(?: (?:of|cost|price|value|amount|qty|quantity|count|pcs|pieces|parts|fasteners|hardware|items|lines|weight|usd|eur|gbp|excl|incl|ex|inc|vat|tax))*\\.? ?[:=]? ?[\\d.,' €$£¥]*$|^(?:合計|小計|総計|合计|小计|总计|总价|共计|合計参考)\\s*[:：]?[\\d.,¥￥]*$`,
  'i',
);

export const NOTE_START =
  /^(?:notes?|n\.?b|remarks?|caution|warning|attention|important|hinweis|anmerkung|bemerkung|nota|remarque|uwaga|注|备注|備考)(?:[ .]*\d+)?\s*(?:[:.)-]|$)|^[*†‡]|^\(\d+\) /i;

export const EXAMPLE_START = /^例|^(?:e\.\s?g\.?|example|beispiel|exemple|ejemplo|esempio)(?:[:) ]|$)/i;

/** Words that begin the title of a group of rows. */
export const GROUP_START =
  /^(?:section|group|panel|assembly|assy|sub-?assy|sub-?assembly|door|unit|module|page|sheet|kit|list|rev|revision|baugruppe|gruppe|blatt)\b/i;
