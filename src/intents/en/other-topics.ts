/**
 * Words of other matters than a roast dinner: sport, school, travel, money, the house, the body, the
 * news. One of them proves nothing ("the train is late" brings guests late); the gate weighs them.
 */
export const otherTopics: ReadonlySet<string> = new Set(
  `account actor actress airfryer airport album aloud alphabet amen angle angles anniversary app
   appointment apps april arm arms army article astronaut attic audience august author autumn
   avenue bacon band bank bar barbecue baseball basketball bath bathroom batsman batteries battery
   beach beard bed bedroom bedtime beer beers bet bike bill billion bills bin bins bird birdie
   birds birth biscuit biscuits bless blood boarding boat boiler book books boss bowler boxing
   bride brisket broom bruise bucks budgie buffet bungalow burger burgers bus buses button buttons
   cab cabin cafe cake cakes camera camping candle candles capital captain car caravan cards career
   carpet cars carvery cast cat caterers cats century cereal chair chairs champion championship
   channel chapter charger chess chicken chips chocolate choir christening church cider cinema
   circle class classroom client clients cloudy club coach coast coat cocktail cocktails code
   coffee cold colleague college company computer concert contestant contestants cooker cookie
   cookies cost costs cough coughed country court cousin cow cows cricket crisps crossword cup
   curry curtains cycling cyclist dance dancing defence defender degree delivery dentist detergent
   deuce diesel discount divide divorce doctor doctors dog dogs doll dollar dollars dolls dragon
   draw drawn dress drill drive driver driving drove drum drums dryer duck ducks ear earrings ears
   earth economy election electric email emails engaged engine english episode equals essay euro
   euros exam exams exit experts eye eyes fairy fans favourite february feet fence ferry fever film
   films final finger fingers fireplace fish flat flight flights floor flu fog foot football
   forecast fox foxes fraction french friday frost funeral funny game games garage garden gas gate
   geography german gin glasses gloves goal goalie goals god goldfish golf goose gossip government
   graduation grand grill groom guitar gym hair haircut hammer hamster handbag hat headache
   headline heart hen hens hexagon highs highway hip history hockey hole holes holiday homework
   hoover horse horses hospital hotel house houses humidity hundredweight hymn ice ice-cream inch
   inflation inning innings interest internet interview invoice iron ironing island italian jacket
   jackpot january jeans jesus jigsaw job jockey joke jokes judge july jumper junction june keeper
   kettle key keys kickoff killed kilometres king kitten knee labour ladder lager lamp landlord lap
   laps laptop latin laugh laughed laundry law lawn lawyer lawyers lbw league lecture leg lego legs
   lesson lessons loan lock locked loo lorry lost lottery lows luggage lungs magazine manager
   marathon march market marriage married mars match maths medal medicine meeting meetings menu
   meter meters metres microwave mile miles million minister miss mobile monday monster moon
   mortgage motorway mountain movie movies multiply murder museum music nappies nappy navy neck
   necklace neighbours netball news newspaper nose novel november nurse obituaries october odds
   office officer offside online operation order page pages paid paint par parcel parking
   parliament parrot party passport password pasta patient pay pays penalty percent petrol phone
   phones photo photos piano pills pint pints pirate pitch pitcher pizza plane planet planets
   platform playground playlist plumber poem police pond pony pool post postman potty pound pounds
   pram pregnant presenter president pressure price prices prime princess printer prison programme
   promotion pub puppy purse puzzle quarterback queen queue quid rabbit race racing racket radiator
   radio rain raining rainy rate rates recipe recycling ref referee refund remote rent restaurant
   rhyme rhymes ring road roads robbery roof room rooms roundabout router rubbish rugby runs salary
   sale salmon sandwich sandwiches santa satnav saturday sauna scarf school schools science
   scientists score scored scorer scoring screen season secret selfie semifinal sentence september
   series sewing shade shares shed sheep shift ship shirt shirts shoe shoes show shower shows sing
   singer singing sink size ski skiing skirt slide slow smoker snack snow snowing sock socks sofa
   soldier soldiers song songs spanish spell spelling spring square stadium stage stairs stamps
   star stars station stitches stock stocks stories storm story street striker sugar suitcase sum
   summer sun sunglasses sunny surgery sushi suspect sweets swim swimming swing tablets tackle
   takeaway tap tax taxes taxi teacher teachers team teams teddy tee teeth television telly tenant
   tennis tent test texting theatre theirs thermostat thousand thousands throat thursday ticket
   tickets tire tires toast toaster toes toilet tomorrow tooth touchdown toy toys traffic train
   trains triangle trip trousers truck tuesday tumble tummy tv tyre umbrella umpire university
   upstairs vacation vacuum van vicar video videos villa voicemail volcano volume vote votes wages
   waiter waitress wallet war wash washing watch weather website wedding weddings wednesday wee
   whisky wicket wickets wifi win wind window windows windy wine winner winning wins winter yard
   yards yesterday yours zip`.split(/\s+/),
);
