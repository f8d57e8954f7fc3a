"""256 short plain words to read aloud, one for each value of a byte.

The project's own choice: things one can picture, no two of which differ by one letter
alone, nothing about the body's illness. Never change, add or reorder a word: both ends of
a call have to have the same list.
"""

from __future__ import annotations

_WORDS = """
acorn album amber anchor ankle apple apron arrow atlas autumn bacon badge bakery ballet
bamboo banana banjo barley basket beaver bench berry bishop blanket blossom bottle branch
bread bridge broom bucket bundle butter button cabin cactus camel candle canoe carpet carrot
castle cedar cello chalk cherry chimney cinema circle clover coconut coffee comet copper
coral cottage cotton cradle crayon cricket crystal curtain cushion daisy desert diamond dinner
dolphin donkey doorway dragon drawer drum duck eagle easel elbow elephant emerald engine
envelope falcon farmer feather fence fiddle flag flute forest fossil fountain fox frog
furrow galaxy garden garlic gazelle ginger giraffe glacier glove goblet goose granite grape
guitar hammer harbour harp harvest hazel hedge helmet hilltop honey horizon hotel husky
iceberg igloo insect iron island ivory jacket jaguar jasmine jelly jewel jigsaw juggler
jungle kayak kennel kettle kitchen kite koala ladder lagoon lantern laundry lavender lemon
leopard library lilac lizard lobster magnet mango maple marble market meadow melon mirror
mitten mosaic muffin museum mustard napkin nectar needle nest nickel noodle nutmeg oak oasis
ocean olive onion orange orchard ostrich otter owl oxygen oyster palace pancake panda paper
pebble pelican pepper piano picnic pigeon pillow pine pirate planet plum pocket pony poppy
potato puppet pyramid quarry quilt rabbit radio rainbow raven ribbon river robin rooster
saddle salmon sandal satchel scarf scooter shadow shell shovel silver sleigh snail spider
spoon squirrel stable sugar sunset swan tablet teapot temple thimble ticket tiger timber
tractor trumpet tulip tunnel turtle umbrella valley vanilla velvet village violin walnut
whistle window yacht zebra zipper
"""

WORD_LIST = tuple(_WORDS.split())
