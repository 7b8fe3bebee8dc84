/**
 * Common words of English that say nothing of what a clause is about, or belong to the talk of any
 * kitchen. What is neither here, nor in a phrase, nor on a card speaks of something else.
 */
export const commonWords: ReadonlySet<string> = new Set(
  `aah about above absolute absolutely accidentally accordingly accurate across active actual
   actually add added adding additional admit adult adults afraid aft after afternoon afterwards
   again agree ahead ahem ahoy aiming alas allow allowed almost alone along alongside already
   alright also altogether always amazing amount angry announce announcing annoyed another answer
   anymore anyone anything anytime anyway anywhere apart apologies apparently appear appears approx
   approximate approximately around arrange arrive arrived arrives arriving arvo aside ask asked
   asking asks assume assuming attempt aunt auntie avoid await aware away awful awkward aye babe
   babies back bad badly bairn bairns bake baked baking bang barely basic basically baste basting
   bear beautiful beautifully because become becomes becoming been before begin beginning begins
   begun being believe below belt bet better between bid big bigger biggest blank bless blimey
   bloke bloomin bog boil boiled boiling boils bonnie bonza boss both bother bothered bottom
   boyfriend brilliant bring brother brought brown browned brownish bub bubbles bubbling buddies
   buddy bump bumped bunch burn burning burns busy butcher button buzz buzzing call called calm
   came cannae cannot canny care careful carefully carked carry caught cause centigrade certain
   certainly chance change changed changing char charred cheap check checked checking checks cheers
   chef child children chill chilled chilling choose chose chosen christmas chuck chucked chuffed
   chunk clean cleaned cleaning clear cleared clearly climb climbed climbing close closer cobber
   cold colder colleague colleagues colour coming company completely cook cooked cooking cooks cool
   cooled cooling correct correctly could count counted counting couple course cousin cover covered
   covering crack cranked crazy creep creeping crikey crisp crisped crisping crispy crowd crunchy
   crust currently cut cuts cutting dad dang darn darned daughter daughters dear decent decide
   decided deep deeper deepest definitely degree delay delayed delaying delays depends did died
   difference different difficult dine diner dinged dining dinkum dinnae dip dipped disaster dishes
   display displays distance divide does doing done doubt doubtful down downstairs drain drained
   draining dried drip dripped dripping drippings drop dropped dropping drops dry duck due dunk
   during each earlier early easily easter easy eat eaten eating eats edge edges eh eight either
   element else empty end ended ending ends enjoy enough entire entirely equal errr especially
   essentially estimate eve even evening evenly eventually ever every everybody everyone everything
   exactly exceed excellent except excited excuse expect expected expecting explain extra extremely
   eye eyes fab fabulous face fact faff faffing fail failed failing fair fairly fall fallen falling
   falls fancy fantastic far fast faster fat father favour fear feel feeling feels fell fetch few
   figure fill filled final finally find finding fine fingers finish finished finishes finishing
   firm first fit fits five fix fixed flame flames flat flip flipped flipping floor focus folk
   folks follow following food fool forever forget forgetting forgot forgotten former forth forty
   forward found four freeze freezing frenching friday friend friends from front frozen fry frying
   fuck fucking full fully fun funny further fuss gadget gang gas gauge gauges general generally
   gentle gently gets getting ghastly girlfriend give given glad glance glaze glazed gloves god
   goddamn goes going golden gone gonna gonnae good goodness gorgeous gosh got gotten gov governor
   grab grabbed gradually gramps gran grand grandad grandfather grandkids grandma grandmother
   grandpa grandparents granny grate grated grateful grease greasy great grey grill grim groceries
   gross group grub guess guest gutted guv habit hail half halfway halve halved hand handle hands
   handy hang hanging happen happened happening happens happy hard harder hardly hasn hate haul
   hauled have haven having head headed heading heads hear heard hearing heat heated heater heating
   heavens heavy heck held hello help helped helper helpers helping helps hen hence here hereby
   hesitate hey hi hide high hinny hint hits hitting hiya hmm hob hold home hope hopeful hopefully
   hoping horrible hot hotter hour hours hover hovering however hubby huge hundreds hungry hurry
   hurt husband idea ideal ideally ignore ill imagine immediately important inch inches include
   included including increase increased indeed indicate indicates indicating inform informed
   inlaws insert inserted inside insist instant instantly instead instruction instructions intend
   intended interest interior internal internally interrupt into isnae issue item jeez jiffy job
   join joined joining jolly judge juices juicy jump jumped jumping just keep ken kept kiddies kids
   kin kind kindly knackered knife knob knock knocked know known lad lads lady lag lagging large
   larger last late later latest laugh lay layer lead leaning leap learn least leave leaving left
   length less lets letting level levels lid lie lift lifted lifting light lighter lights like
   likely limit line listen lit little load loads long longer look looking looks loose lord lose
   losing loss lost lot lots lovely low lower lowered lowest luck luckily lump lumps lumpy luv ma
   mad madam made main mainly major make makes making manage managed manner many mark marked marks
   mash mashed mass massive mate matter matters maximum maybe meal meals mean means meantime
   measure measured measures measuring mechanically meet member members mention mess messed messing
   met midnight might mild mind mine minus minute minutes miss missed missing missus mistake mix
   mixed mixing moist moisture mom moment monday moo mooing more morning most mostly mother mount
   mouths move moved moving much muck must nae naff narrow nasty natural nay near nearly neat
   necessarily neck need needed needing needle needs neighbour neighbours neither nephew nervous
   never next nice nicely niece noon nope nor normal normally notch note noted notes nothing notice
   noticed nought number numbers obviously occur och odd offer often oi okay ole once ones only
   onto oopsie open opened opening opposite opt option options order ordered orders ordinary
   original other otherwise ought oughta ours outer outright outside ovens over overall overdo
   overdone overly overview owing pace pack package packed pair pal pale pals pan panic panicking
   pans para parents part partly pass passed passes passing past patience pause peak peaked peek
   peel peeled peeling peep pending people per perfect perfection perfectly perhaps period person
   persons petal pick picked picking piece pieces pile pill pink pinker pinkish pit pity place
   placed plain plan planned plate plates play please plenty plonk plonked plop plopped point poke
   poked poking pop popped popping position possible possibly potato pour poured pouring prefer
   preferred prep prepare prepared preparing prepone prepping present press pressed pretty prevent
   previous previously prick prior prob probably problem problems proceed progress promise promised
   prompt prong prop proper properly proud pull pulled pulling pulls push pushed pushes pushing
   quarter quarters question quick quickly quit quite rail raise raised rang range ranges rapid
   rapidly rare rate rather raw reach reached reaching reaction readout ready real realise realised
   realize really reason reasonable reasonably recall receive recent recently recheck reckon reduce
   reduced reduces reducing regards register registered registering registers related relations
   relatives relax release reliable rely remain remained remaining remains remember remind remove
   removed removing repeat report require required rescue respect rest rested resting result return
   returned rice rich rid right ring rings ripper ripping rise risen rises rising risk roasted
   roasts rock roll rolled rolls room rotate rotated rotten rough roughly round rounded row rub
   rubbed rubbing ruin ruined rule run running runs rush rushed rushing sad safe safely said sake
   salted salty same sat satisfied saturday sauce save saved saw saying says scale scared schedule
   scorch scorched screen screw screwed scrub scrubbed sear seared searing seat seated seats second
   section see seeing seem seemed seems seen select self sending sensor separate serious seriously
   serve served serves serving setting settle settled settling seven several shall shame shape
   share sharp sheila shelf shift shine shit shite shock shoot short shortly shot should shoulder
   shout shouted shouting shove shoved shoving show shown shows shut sibling siblings sick side
   sight signal signs silly similar simmering simple simply since single sir sire sister sits
   sitting situation six size skin skip skipped slack slice sliced slices slicing slid slide
   sliding slightly slip slipped slow slower slowly smack small smaller smell smelling smells
   smidge smooth snag soak soft softened soggy solid some somehow someone something somewhere son
   sons soon sooner sore sorry sort sound sounds space spare speed spicy spill spilled spilt spin
   spit split spoke spoken spoon spot stab stabbed stable stage stall stalled stalling stand
   standard standing stands started starting state stay stayed staying stays steady steam steamed
   steaming steep step stepdaughter steps stepson stick sticking sticks still stir stirred stirring
   stock stone stood stop stopped stopping stops straight strain strained strange strength stress
   stressed stressful strict string strip strong struggle struggling struth stuck stuff stumped
   stupid style such sudden suddenly suffer suggest suit sunday super supply supposed sure surely
   surface surprise surprised surprisingly swap swapped sweat sweet swing swinging switch switched
   switching ta table tables tad take taken takes taking talking tall tap task taste tasted tastes
   tasting tasty tea tear tears technically teenager teenagers tell tells temper temps ten tend
   tender tenderised tends tent tented terrible terribly test tested testing text texted texting
   than thank thankfully thanks thanksgiving that their them then thence there thereabouts
   therefore thermo these they thick thicken thickened thicker thickest thin thing things think
   thinking third thirds thirty this thoroughly those though thought thousand three threw through
   throw throwing thrown thumb thursday tidy tight till tilt time times timing tin tiny tip tipped
   tips tired tiring toasted toasty today toddler together told tomorrow tongs tonight took tool
   top tops toss tossed total totally touched touching touchy tough toward towards track tray trays
   treat trick tricky tried tries trim trimmed trimming trip trouble trust truth try trying tuck
   tucked tuesday tug turn turned turning turns twelve twenty twice twins twist twisted type
   typically ugh ultimate unable uncle uncover uncovered under underneath understand understood
   undo unfortunately unit units unless unlikely unplugged unsure until unusual upon upper ups
   upset upstairs used useful useless using usual utterly value vary version very via view visible
   visitor visitors vital wacky wait waited waiting waits wake walked wand wander want wanted
   wanting wants warm warmed warmer warming warn warned warning wash washed washing wasnae waste
   watch watched watching water watery wave way wayward weak wedge wednesday wee weigh weighed
   weighing weighs weight weird welcome well went were whack whacked what whatever whatsoever when
   whence where wherever whether whew which while whip whipped whisk whisked whoa whoever whole
   wholly whoops wicked wide wider wife wildly will wipe wiped wise wish wishes with within without
   wobble wobbly woke wonder wonderful wondering wonky wont wood word words work worked working
   works worn worried worries worry worrying worse worst worth would wound wow wrap wrapped wrecked
   final earliest latest outside meantime bodies crew bum bums gang shown peoples headcount altogether wretched write wrong wrongly yay yeah yell yelling yep yes yesterday yet yikes yonks young
   younger your yours yup zap zero zone`.split(/\s+/),
);
